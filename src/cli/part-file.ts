import { readLengthMm } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'

/** A part as a file holds it, lengths worked out; `vise` the sizes of one, its name, or nothing. */
export type PartFile = { readonly vise: unknown; readonly rest: { readonly [key: string]: unknown } }

/** Levels of lists and records; a part has some four. */
const mostLevels = 64
const known = ['vise', 'part', 'cuts', 'wishes', 'ways'] as const

/**
 * Takes a part file apart and makes a number of millimetres of each length given as a text with its unit.
 *
 * What the values mean is not looked at here: they go the way of every case of `calc setup`.
 *
 * @throws Refusal `field-missing` for what is no record, `unknown-key`, `too-deep`, and as `readLengthMm`
 */
export function readPartFile(raw: unknown): PartFile {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) throw new Refusal('field-missing', { field: '', given: Array.isArray(raw) ? 'a list' : typeof raw, needed: 'a record with part' })
  const strange = Object.keys(raw).filter((key) => !(known as readonly string[]).includes(key))
  if (strange.length > 0) throw new Refusal('unknown-key', { keys: strange, needed: [...known] })
  const { vise = null, ...rest } = withLengths(raw, '') as { readonly [key: string]: unknown }
  return { vise, rest }
}

function withLengths(value: unknown, path: string, level = 0): unknown {
  if (level > mostLevels) throw new Refusal('too-deep', { needed: mostLevels })
  if (Array.isArray(value)) return value.map((one: unknown, k) => withLengths(one, `${path}[${k}]`, level + 1))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, inside]) => {
    const field = path === '' ? key : `${path}.${key}`
    return [key, key.endsWith('Mm') && typeof inside === 'string' && inside !== 'auto' ? readLengthMm(inside, 'mm', field) : withLengths(inside, field, level + 1)]
  }))
}
