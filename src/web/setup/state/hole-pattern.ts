import { attemptOr } from '#model/attempt.ts'
import { readLengthMm, wordLength } from '#model/length.ts'
import type { HoleForm, SetupForm } from '#model/setup-form.ts'

/** `along`: the same hole as far from the other end. `across`: as far from the other jaw. `four`: both, four holes in all. */
export type Pattern = 'along' | 'across' | 'four'

/** Which field has to be given before a hole can be mirrored so; null: it can be. */
export function patternNeeds(form: SetupForm, index: number, pattern: Pattern): string | null {
  const hole = form.cuts[index]
  if (hole?.kind !== 'hole') return null
  if (pattern === 'across') return hole.across.trim() === '' ? `cuts[${index}].across` : null
  if (lengthOf(hole.along, form.unit) === null) return `cuts[${index}].along`
  return lengthOf(form.along, form.unit) === null ? 'along' : null
}

/** The form with the mirrored holes put in after the one they were made from. */
export function withPattern(form: SetupForm, index: number, pattern: Pattern): SetupForm {
  const hole = form.cuts[index]
  if (hole?.kind !== 'hole' || patternNeeds(form, index, pattern) !== null) return form
  const further = pattern === 'across' ? [acrossFrom(hole)]
    : pattern === 'along' ? [alongFrom(hole, form)]
    : [alongFrom(hole, form), acrossFrom(hole), acrossFrom(alongFrom(hole, form))]
  return { ...form, cuts: [...form.cuts.slice(0, index + 1), ...further, ...form.cuts.slice(index + 1)] }
}

/** Measured from the other jaw instead: the text stays as typed. */
const acrossFrom = (hole: HoleForm): HoleForm => ({ ...hole, from: hole.from === 'fixed' ? 'moving' : 'fixed' })

function alongFrom(hole: HoleForm, form: SetupForm): HoleForm {
  const mm = readLengthMm(form.along, form.unit) - readLengthMm(hole.along, form.unit)
  return { ...hole, along: wordLength(mm, { length: form.unit, decimalMark: hole.along.includes(',') ? ',' : '.' }).replace('−', '-') }
}

const lengthOf = (text: string, unit: SetupForm['unit']): number | null => attemptOr(() => readLengthMm(text, unit), null)
