import { type Leftover, leftOfBars, leftOfPlate, type Useful, usefulFor } from '#engine/make/blanks/leftovers.ts'
import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'
import type { JobView } from '#engine/make/job/job-view.ts'
import type { PlannedWith } from '#model/job-record.ts'
import { Refusal } from '#model/refusal.ts'
import type { StockRecordFields } from '#model/stock-record.ts'

/** The cut lists of a job as far as they are worked out, by `bars 0` and `plate 0`. */
export type CutsFound = { readonly [cut: string]: CutBarsAnswer | CutPlateAnswer | Refusal | null }

/** What is left of the stock of a job and worth keeping; nothing of a cut list that is still being worked out. `lengthsMm`: of the bars of the shop. */
export function leftoversOf({ route: { cuts }, order }: JobView, lengthsMm: readonly number[], found: CutsFound): readonly Leftover[] {
  const useful: Useful = usefulFor(order.lengthMm, lengthsMm)
  const left = <Answer>(key: string, leftOf: (answer: Answer) => readonly Leftover[]): readonly Leftover[] => {
    const answer = found[key] ?? null
    return answer === null || answer instanceof Refusal ? [] : leftOf(answer as Answer)
  }
  return [
    ...(cuts?.bars ?? []).flatMap((cut, at) => left<CutBarsAnswer>(`bars ${at}`, (answer) => leftOfBars(cut, answer, useful))),
    ...(cuts?.plates ?? []).flatMap((cut, at) => left<CutPlateAnswer>(`plate ${at}`, (answer) => leftOfPlate(cut, answer, useful))),
  ]
}

/** The record of an offcut: steel, condition and thickness of the stock it came off, and paid for with that. `called`: name and note, in words. */
export function offcutFrom({ form, lengthMm, widthMm, count }: Leftover, parent: PlannedWith['plates'][number], called: Pick<StockRecordFields, 'name' | 'note'>): StockRecordFields {
  const { steel, condition, thicknessMm } = parent
  return { ...called, steel, condition, thicknessMm, form, lengthMm, widthMm, count, price: 0, offcut: true, retired: false }
}
