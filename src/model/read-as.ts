import type { z } from 'zod'
import { type Fact, Refusal } from '#model/refusal.ts'

/**
 * Data from outside as the value of a schema, or a refusal of the first thing amiss.
 *
 * @param field  path of the whole in what was sent, put before the path inside it; '' for the top
 * @throws Refusal `field-missing`, `unknown-key`, `not-a-number`, `unknown-word`, `size-not-positive`, `too-large`, `too-many`, `value-not-allowed`
 */
export function readAs<Value>(schema: z.ZodType<Value>, raw: unknown, field = ''): Value {
  const read = schema.safeParse(raw)
  if (read.success) return read.data
  throw refusalFrom(read.error.issues[0]!, raw, field)
}

function refusalFrom(issue: z.core.$ZodIssue, raw: unknown, top: string): Refusal {
  const field = pathOf(top, issue.path)
  const value = valueAt(raw, issue.path)
  const given = shown(value)
  const refuse = (code: string, needed: Fact) => new Refusal(code, { field, given, needed })
  if (issue.code === 'unrecognized_keys') {
    const key = issue.keys[0]!
    return new Refusal('unknown-key', { field: pathOf(field, [key]), given: key })
  }
  if (value === undefined) return new Refusal('field-missing', { field, given: null, needed: neededBy(issue) })
  if (issue.code === 'invalid_type' && issue.expected === 'number') return refuse('not-a-number', 'number')
  if (issue.code === 'invalid_value') return refuse('unknown-word', issue.values.map(String))
  if (issue.code === 'invalid_union' && 'options' in issue) return refuse('unknown-word', (issue.options as readonly unknown[]).map(String))
  if (issue.code === 'invalid_key') return new Refusal('unknown-key', { field, given: String(issue.path.at(-1)).slice(0, 60) })
  if (issue.code === 'too_small' && issue.origin === 'number' && issue.minimum === 0 && !issue.inclusive) return refuse('size-not-positive', { above: 0 })
  if (issue.code === 'too_big' && issue.origin === 'number') return refuse('too-large', { most: Number(issue.maximum) })
  if (issue.code === 'too_big' && issue.origin === 'array') return new Refusal('too-many', { field, given: Array.isArray(value) ? value.length : null, needed: Number(issue.maximum) })
  return refuse('value-not-allowed', neededBy(issue))
}

/** What would have done, in plain words. */
function neededBy(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_type') return ({ number: 'number', string: 'text', boolean: 'true or false', array: 'a list', object: 'a record', record: 'a record' } as const)[issue.expected as 'number'] ?? issue.expected
  if (issue.code === 'invalid_value') return `one of ${issue.values.map(String).join(', ')}`
  if (issue.code === 'invalid_format') return issue.format === 'datetime' ? 'a time such as 2025-03-04T05:06:07.000Z' : `a text of the form ${'pattern' in issue ? issue.pattern : issue.format}`
  if (issue.code === 'too_small') return issue.origin === 'number' ? `at least ${issue.minimum}` : `at least ${issue.minimum} long`
  if (issue.code === 'too_big') return issue.origin === 'number' ? `at most ${issue.maximum}` : `at most ${issue.maximum} long`
  return 'another value'
}

function pathOf(top: string, path: readonly PropertyKey[]): string {
  return path.reduce<string>((so, step) => (typeof step === 'number' ? `${so}[${step}]` : so === '' ? String(step) : `${so}.${String(step)}`), top)
}

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, step) => (value !== null && typeof value === 'object' && Object.hasOwn(value, step) ? (value as { [key: PropertyKey]: unknown })[step] : undefined), raw)
}

/** A value small enough to be said back; NaN and the endless become words, as JSON has none for them. */
function shown(value: unknown): Fact {
  if (value === null || typeof value === 'boolean') return value
  if (typeof value === 'number') return Number.isFinite(value) ? value : String(value)
  if (typeof value === 'string') return value.slice(0, 60)
  return value === undefined ? null : Array.isArray(value) ? 'a list' : 'a record'
}
