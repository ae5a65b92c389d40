import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'

export type Readers<Values> = { readonly [Name in keyof Values]: () => Values[Name] }
export type Refused<Values> = { readonly [Name in keyof Values]?: Refusal }

/** Every field of a form at once: all values, or for each field that cannot be read its refusal. */
export function readFields<Values extends object>(readers: Readers<Values>): { readonly values: Values } | { readonly refused: Refused<Values> } {
  const values: Partial<Values> = {}, refused: { [Name in keyof Values]?: Refusal } = {}
  for (const name of Object.keys(readers) as (keyof Values)[]) {
    const read = attempt(readers[name])
    if (read instanceof Refusal) refused[name] = read
    else values[name] = read
  }
  return Object.keys(refused).length > 0 ? { refused } : { values: values as Values }
}

/** A text that must not be empty. @throws Refusal `field-missing` */
export function readName(text: string, field: string): string {
  if (text.trim() === '') throw new Refusal('field-missing', { field, given: null, needed: 'text' })
  return text.trim()
}
