import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'
import { type Leftover, leftOfBars, leftOfPlate, parentOf, usefulFor } from '#engine/make/blanks/leftovers.ts'
import type { JobView } from '#engine/make/job/job-view.ts'
import type { JobRecord } from '#model/job-record.ts'
import { wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { newId } from '#web/new-id.ts'
import type { Edit } from '#web/write.ts'

/** The cut lists of a job as far as they are worked out, by `bars 0` and `plate 0`. */
export type CutsFound = { readonly [cut: string]: CutBarsAnswer | CutPlateAnswer | Refusal | null }

const prefix = 'kept.', mostLetters = 60

/** What is left of the stock and worth keeping; nothing while a cut list is still being worked out. */
export function leftoversOf({ route: { cuts }, order }: JobView, { bars }: Pick<ShopSnapshot, 'bars'>, found: CutsFound): readonly Leftover[] {
  const useful = usefulFor(order.lengthMm, bars.map(({ lengthMm }) => lengthMm))
  const of = <Answer extends CutBarsAnswer | CutPlateAnswer>(key: string): Answer | null => { const answer = found[key]; return answer === undefined || answer instanceof Refusal ? null : answer as Answer | null }
  const fromBars = (cuts?.bars ?? []).flatMap((cut, at) => { const answer = of<CutBarsAnswer>(`bars ${at}`); return answer === null ? [] : leftOfBars(cut, answer, useful) })
  return [...fromBars, ...(cuts?.plates ?? []).flatMap((cut, at) => { const answer = of<CutPlateAnswer>(`plate ${at}`); return answer === null ? [] : leftOfPlate(cut, answer, useful) })]
}

/** `620 × 260 of Plate`, for the tick and for what is said of it. */
export function sayLeftover(left: Leftover, { planned }: Pick<JobRecord, 'planned'>, units: Units): string {
  const { lengthMm, widthMm, count } = left
  return `${count > 1 ? `${count} of ` : ''}${wordLength(lengthMm, units)} × ${wordLength(widthMm, units)} from ${parentOf(left, planned!)?.name ?? 'the stock'}`
}

/** New offcuts, paid for with their stock; `kept`: the fields by which the job knows them again. */
export function keepEdits(lefts: readonly Leftover[], { name, planned }: Pick<JobRecord, 'name' | 'planned'>): { readonly edits: Edit[]; readonly kept: JobRecord['tools'] } {
  const kept: { [key: string]: string } = {}, edits = lefts.flatMap((left): Edit[] => {
    const parent = parentOf(left, planned!), record = newId()
    if (parent === undefined) return []
    kept[prefix + record] = String(left.count)
    const { steel, condition, thicknessMm } = parent, { form, lengthMm, widthMm, count } = left
    return [{ kind: 'stock', record, fields: { name: `${parent.name}, rest`.slice(0, mostLetters), steel, condition, thicknessMm, form, lengthMm, widthMm, count, price: 0, offcut: true, retired: false, note: `Left of ${parent.name}${name === '' ? '' : `, ${name}`}` } }]
  })
  return { edits, kept }
}

/** The offcuts a job kept are no stock any more: it was not sawn after all. */
export function unkeepEdits(tools: JobRecord['tools']): Edit[] {
  return Object.keys(tools).flatMap((key): Edit[] => (key.startsWith(prefix) ? [{ kind: 'stock', record: key.slice(prefix.length), fields: { count: 0, retired: true } }] : []))
}

export const withoutKept = (tools: JobRecord['tools']): JobRecord['tools'] => Object.fromEntries(Object.entries(tools).filter(([key]) => !key.startsWith(prefix)))
