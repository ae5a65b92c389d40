import { useEffect, useRef, useState } from 'react'
import { Refusal } from '#model/refusal.ts'
import type { BarCut, PlateCut } from '#model/blank.ts'
import { askCut, type CutAsking } from '#web/make/ask-cut.ts'
import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'

type Answers = { readonly 'cut-bars': CutBarsAnswer; readonly 'cut-plate': CutPlateAnswer }
/** A cut list while it is worked out and after: the answer as it stands, null before there is one. */
export type Cutting<Name extends keyof Answers> = { readonly state: 'working' | 'there' | 'stopped'; readonly answer: Answers[Name] | Refusal | null; readonly stop: () => void }

type Found<Name extends keyof Answers> = Pick<Cutting<Name>, 'state' | 'answer'> & { readonly raw: string | null }
const nothing = { raw: null, state: 'working', answer: null } as const

/** The longest a cut list may take before it is left at its bound, in seconds. */
export const secondsMost = 10

/** Works a cut list out in a thread of its own, from when it is shown until it is there, stopped or out of view. */
export function useCut<Name extends keyof Answers>(name: Name, cut: BarCut | PlateCut): Cutting<Name> {
  const [found, setFound] = useState<Found<Name>>(nothing), asking = useRef<CutAsking<Name> | null>(null), raw = JSON.stringify(rawCut(cut))
  useEffect(() => {
    let wanted = true
    const put = (state: Cutting<Name>['state'], answer: Answers[Name] | Refusal | null) => { if (wanted) setFound((before) => ({ raw, answer, state: before.raw === raw && before.state === 'stopped' ? 'stopped' : state })) }
    const one = askCut(name, JSON.parse(raw), (standing) => put('working', standing))
    asking.current = one
    one.answer.then((last) => put('there', last), (error: unknown) => {
      if (!(error instanceof Refusal)) throw error
      put('there', error)
    })
    return () => { wanted = false; one.stop() }
  }, [name, raw])
  const { state, answer } = found.raw === raw ? found : nothing
  return { state, answer, stop: () => { setFound({ raw, state: 'stopped', answer }); asking.current?.stop() } }
}

/** What the calculation takes; the rest of the case is for the drawing. A stock length that is bought as needed has no end to it. */
export function rawCut(cut: BarCut | PlateCut): object {
  if ('plateWidth' in cut) return { secondsMost, plateWidth: cut.plateWidth, kerf: cut.kerf, pieces: cut.pieces }
  return { secondsMost, kerf: cut.kerf, stock: cut.stock.map(({ length, available }) => ({ length, ...(available === null ? {} : { available }) })), pieces: cut.pieces }
}
