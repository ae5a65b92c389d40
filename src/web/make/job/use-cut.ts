import { useEffect, useRef, useState } from 'react'
import { Refusal } from '#model/refusal.ts'
import type { BarCut, PlateCut } from '#model/blank.ts'
import { askCut, type CutAsking } from '#web/make/ask-cut.ts'
import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'

type Answers = { readonly 'cut-bars': CutBarsAnswer; readonly 'cut-plate': CutPlateAnswer }
/** A cut list while it is worked out and after: the answer as it stands, null before there is one. */
export type Cutting<Name extends keyof Answers> = { readonly state: 'working' | 'there' | 'stopped'; readonly answer: Answers[Name] | Refusal | null; readonly stop: () => void }

/** The longest a cut list may take before it is left at its bound, in seconds. */
export const secondsMost = 10

/** Works a cut list out in a thread of its own, from when it is shown until it is there, stopped or out of view. */
export function useCut<Name extends keyof Answers>(name: Name, cut: BarCut | PlateCut): Cutting<Name> {
  const [state, setState] = useState<Cutting<Name>['state']>('working'), [answer, setAnswer] = useState<Answers[Name] | Refusal | null>(null), asking = useRef<CutAsking<Name> | null>(null), raw = JSON.stringify(rawCut(cut))
  useEffect(() => {
    let wanted = true
    setState('working')
    setAnswer(null)
    const one = askCut(name, JSON.parse(raw), (standing) => { if (wanted) setAnswer(standing) })
    asking.current = one
    one.answer.then((last) => { if (wanted) { setAnswer(last); setState((now) => (now === 'stopped' ? now : 'there')) } }, (error: unknown) => {
      if (!wanted) return
      if (!(error instanceof Refusal)) throw error
      setAnswer(error)
      setState('there')
    })
    return () => { wanted = false; one.stop() }
  }, [name, raw])
  return { state, answer, stop: () => { setState('stopped'); asking.current?.stop() } }
}

/** What the calculation takes; the rest of the case is for the drawing. A stock length that is bought as needed has no end to it. */
export function rawCut(cut: BarCut | PlateCut): object {
  if ('plateWidth' in cut) return { secondsMost, plateWidth: cut.plateWidth, kerf: cut.kerf, pieces: cut.pieces }
  return { secondsMost, kerf: cut.kerf, stock: cut.stock.map(({ length, available }) => ({ length, ...(available === null ? {} : { available }) })), pieces: cut.pieces }
}
