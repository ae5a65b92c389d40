import { useEffect, useState } from 'react'
import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'
import type { CutList } from '#model/blank.ts'
import { Refusal } from '#model/refusal.ts'
import { askCut } from '#web/make/ask-cut.ts'
import { rawCut } from '#web/make/job/use-cut.ts'

export type CutPlans = { readonly bars: readonly (CutBarsAnswer | Refusal | null)[]; readonly plates: readonly (CutPlateAnswer | Refusal | null)[] }

/** All cut lists of a job, one after the other; null until the last is there. */
export function useCutPlans(cuts: CutList | null): CutPlans | null {
  const [plans, setPlans] = useState<CutPlans | null>(null), raw = JSON.stringify(cuts)
  useEffect(() => {
    let stop = () => {}, wanted = true
    const list = JSON.parse(raw) as CutList | null
    const ask = async <Name extends 'cut-bars' | 'cut-plate'>(name: Name, cut: CutList['bars'][number] | CutList['plates'][number]) => {
      if (!wanted) return null
      const asking = askCut(name, rawCut(cut), () => {})
      stop = asking.stop
      return await asking.answer.catch((error: unknown) => { if (error instanceof Refusal) return error; throw error })
    }
    const all = async () => {
      const bars: (CutBarsAnswer | Refusal | null)[] = [], plates: (CutPlateAnswer | Refusal | null)[] = []
      for (const cut of list?.bars ?? []) bars.push(await ask('cut-bars', cut))
      for (const cut of list?.plates ?? []) plates.push(await ask('cut-plate', cut))
      if (wanted) setPlans({ bars, plates })
    }
    void all()
    return () => { wanted = false; stop() }
  }, [raw])
  return plans
}
