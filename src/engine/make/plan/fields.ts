import type { ActualField } from '#model/make-plan.ts'
import type { Actuals, MadeBar, MakeStep, ReadingAsked } from '#model/make-step.ts'

/** mm, HRC. Decimals are not exact in binary. */
const slack = 1e-9

/** The blanks of one step for every bar, filled in as far as it was read. Limits of sizes count from the size after the step; a difference of mates is asked of the first of them. */
export function fieldsOf({ kind, reads, sizes }: MakeStep, bars: readonly MadeBar[], { readings }: Actuals): readonly ActualField[] {
  return bars.flatMap(({ id, heightMm, matesId }) => reads.filter(({ what }) => what !== 'difference of mates' || bars.find((one) => one.matesId === matesId)!.id === id).map((asked): ActualField => {
    const values = readings.findLast((one) => one.step === kind && one.bar === id && one.what === asked.what)?.values ?? null
    const from = fromOf(asked, sizes.find((one) => one.heightMm === heightMm)), least = shifted(asked.least, from), most = shifted(asked.most, from)
    const isInside = values === null || (least === null && most === null) ? null : values.every((one) => one >= (least ?? -Infinity) - slack && one <= (most ?? Infinity) + slack)
    return { bar: id, what: asked.what, places: asked.places, least, most, values, isInside }
  }))
}

/** Null where a limit of a size has no size to count from. */
function fromOf({ what }: ReadingAsked, at: MakeStep['sizes'][number] | undefined): number | null {
  if (what === 'length') return at?.size.lengthMm ?? null
  if (what === 'height') return at?.size.heightMm ?? null
  return what === 'thickness' ? (at?.size.thicknessMm ?? null) : 0
}

const shifted = (limit: number | null, from: number | null): number | null => (limit === null || from === null ? null : limit + from)
