import type { Fact, Facts } from '#model/refusal.ts'
import { sayField } from '#words/say-field.ts'
import { capital, listOf, type Say, type Wording } from '#words/wording.ts'

/** Input that cannot be read, and sizes that no part, bar or vise has. Facts: field, given, needed. */
export const inputRefusals: { readonly [code: string]: Say } = {
  'field-missing': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; ${ask(facts, w)}.`,
  'not-a-number': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is no ${noun(facts)}; ${ask(facts, w)}.`,
  'two-decimal-marks': (facts, w) => `${field(facts, w)}: ${given(facts, w)} has two decimal marks; type one, and no mark for thousands.`,
  'zero-denominator': (facts, w) => `${field(facts, w)}: ${given(facts, w)} divides by 0; type a fraction such as 7/8.`,
  'unknown-unit': (facts, w) => `${field(facts, w)}: the unit of ${given(facts, w)} is not known; use ${needed(facts, w)}.`,
  'unknown-word': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is not known here; use ${needed(facts, w)}.`,
  'unknown-key': (facts, w) => `${keys(facts)} not known here; ${facts.needed === undefined ? 'check the spelling' : `known are ${needed(facts, w)}`}.`,
  'too-large': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is too large; give ${needed(facts, w)} and check the unit.`,
  'too-many': (facts, w) => `${field(facts, w)}: ${given(facts, w)} are too many; give at most ${needed(facts, w)}.`,
  'size-not-positive': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; it must be ${needed(facts, w)}.`,
  'depth-negative': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; it cannot be below 0.`,
  'wish-negative': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; a wish cannot be below 0.`,
  'angle-out-of-range': (facts, w) => `${field(facts, w)}: ${given(facts, w)} given; the point of a drill is more than 0 and at most 180 degrees.`,
}

const example = 'type a number such as 25.4, 7/8 or 1 3/8'

export function field(facts: Facts, w: Wording): string {
  return typeof facts.field === 'string' ? capital(sayField(facts.field, w)) : 'Input'
}

/** A text as it was typed, in quotes; a number in the person's units where the field is a length. */
export function given(facts: Facts, w: Wording): string {
  const value = facts.given
  if (typeof value === 'number') return isLength(facts) ? w.length(value) : w.number(value)
  if (typeof value === 'string') return `'${value.slice(0, 60)}'`
  return value === undefined || value === null ? 'nothing' : `'${JSON.stringify(value).slice(0, 60)}'`
}

/** What would do: words to choose from, a number, or a limit such as `{ mostMm: 150 }`. */
export function needed(facts: Facts, w: Wording): string {
  return neededText(facts.needed, isLength(facts), w)
}

function neededText(value: Fact | undefined, length: boolean, w: Wording): string {
  if (value === undefined || value === null) return 'something else'
  if (typeof value === 'number') return length ? w.length(value) : w.number(value)
  if (typeof value === 'string' || typeof value === 'boolean') return String(value)
  if (Array.isArray(value)) return listOf(value.map((one) => neededText(one, length, w)), 'or')
  return listOf(Object.entries(value).map(([name, limit]) => limitText(name, limit, w)))
}

const limits: { readonly [name: string]: string } = { most: 'at most', least: 'at least', above: 'more than', below: 'less than', more: 'more than' }

function limitText(name: string, value: Fact, w: Wording): string {
  const word = limits[name.replace(/(Mm|Deg)$/, '')] ?? name
  return `${word} ${neededText(value, name.endsWith('Mm'), w)}`
}

/** A number in such a field is in millimetres. `of` names the size behind a field of a form, whose own name has no unit. */
function isLength(facts: Facts): boolean {
  const path = facts.of ?? facts.field
  return typeof path === 'string' && path.endsWith('Mm')
}

/** What a text in the field should have been. */
function noun(facts: Facts): string {
  return typeof facts.field === 'string' && /stick|stack|lead|angle|Deg$|Um$|station|port|tolerance|hours$|hardness|hrc$|teeth|rpm$|yield|straighten\.e$|^pairs$|^vises$|cost$|days$|forceN$|torqueNm$|kd$|wear$/i.test(facts.field) ? 'number' : 'length'
}

function ask(facts: Facts, w: Wording): string {
  const wanted = facts.needed
  if (wanted === undefined || wanted === 'number' || wanted === 'length') return example
  return `give ${needed(facts, w)}`
}

function keys(facts: Facts): string {
  const all = Array.isArray(facts.keys) ? facts.keys : [facts.field ?? facts.given ?? '?']
  const quoted = all.slice(0, 8).map((key) => `'${String(key).slice(0, 60)}'`)
  return `${listOf(quoted)} ${quoted.length === 1 ? 'is' : 'are'}`
}
