import type { Fact } from '#model/refusal.ts'

/**
 * Of a field that is a list by key, each part can be changed for itself, so that two who change different parts never clash:
 * in a change, part `KEY` of `typed` is the field `typed.KEY`. A part always goes over what the whole field was given.
 *
 * @returns the whole field's name, and the key; null: the field is meant as a whole
 */
export function partOf(field: string): { readonly whole: string; readonly key: string | null } {
  const dot = field.indexOf('.')
  return dot < 0 ? { whole: field, key: null } : { whole: field.slice(0, dot), key: field.slice(dot + 1) }
}

/** The whole field with one part put in; the empty text takes a part away. */
export function withPart(whole: Fact, key: string, part: Fact): { readonly [key: string]: Fact } {
  const { [key]: _before, ...others } = whole as { readonly [key: string]: Fact }
  return part === '' ? others : { ...others, [key]: part }
}

/** All fields as they stand, each with its parts put in. */
export function withParts(fields: { readonly [field: string]: Fact }): { readonly [field: string]: Fact } {
  const whole: { [field: string]: Fact } = {}
  for (const [field, value] of Object.entries(fields)) if (partOf(field).key === null) whole[field] = value
  for (const [field, value] of Object.entries(fields)) {
    const { whole: name, key } = partOf(field)
    if (key !== null) whole[name] = withPart(whole[name] ?? {}, key, value)
  }
  return whole
}
