import { answerChuck } from '#engine/setup/chuck/answer-chuck.ts'
import { sides, type Travel } from '#engine/setup/chuck/chuck.ts'
import type { Bar } from '#model/bar.ts'
import { type LengthUnit, readLengthMm, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { grouped } from '#web/setup/beside/grouped.ts'
import type { RackHere } from '#web/setup/beside/rack-here.ts'

/** The part as typed. */
export type ChuckTexts = { readonly height: string; readonly across: string; readonly along: string }

/** The part as read, and what the calculation says of it. @throws Refusal of `readLengthMm` and of `answerChuck` */
export function chuckAnswered({ height, across, along }: ChuckTexts, travel: Travel, bars: readonly Bar[], unit: LengthUnit) {
  const mm = (text: string, field: string) => readLengthMm(text, unit, field)
  const part = { betweenJawsMm: mm(across, 'part.betweenJawsMm'), alongJawsMm: mm(along, 'part.alongJawsMm'), heightMm: mm(height, 'part.heightMm') }
  return { part, answer: answerChuck({ part, bars, travel }) }
}

/** Bars that nobody tells apart: of one name, slot, thickness and trust. */
export type BarKind = { readonly key: string; readonly of: readonly Bar[] }

/** The bars that serve, by kind; that of which there are most comes first. */
export function kindsOf(serve: readonly string[], { bars, labelOf, slotOf, stateOf }: RackHere, units: Units): readonly BarKind[] {
  const keyOf = (bar: Bar) => `${labelOf(bar.id)}|${slotOf([bar.id])}|${wordLength(bar.thicknessMm, units)}|${stateOf([bar])}`
  const kinds = [...grouped(bars.filter(({ id }) => serve.includes(id)), keyOf)].map(([key, of]) => ({ key, of }))
  return kinds.toSorted((a, b) => b.of.length - a.of.length)
}

/** `3 × 10 A, slot 4: 8 thick, as marked`. */
export function sayKind({ of }: BarKind, { labelOf, slotOf, stateOf }: RackHere, units: Units): string {
  const bar = of[0]!, many = of.length > 1 ? `${of.length} × ` : '', marked = bar.thicknessStanding === 'marked' ? ', as marked' : ''
  return `${many}${labelOf(bar.id)}, slot ${slotOf([bar.id])}: ${wordLength(bar.thicknessMm, units)} thick${marked}${stateOf([bar])}`
}

/** The kinds chosen, as far as they still serve; while none was, the first, as many as the four sides need. */
export function takenOf(kinds: readonly BarKind[], chosen: readonly string[] | null): readonly BarKind[] {
  return chosen === null ? firstOf(kinds) : chosen.flatMap((key) => kinds.find((kind) => kind.key === key) ?? [])
}

function firstOf(kinds: readonly BarKind[]): readonly BarKind[] {
  let many = 0
  return kinds.filter(({ of }) => { const isNeeded = many < sides.length; many += of.length; return isNeeded })
}
