import { Refusal } from '#model/refusal.ts'
import { Complaints } from '#engine/read/complaints.ts'
import { RawObject } from '#engine/read/raw-object.ts'

/** Paths of the keys that were given and that nobody knows, such as `part.colour`. */
export type Ignored = { readonly ignored: readonly string[] }

/** Reads all of a case, then refuses it if anything in it was malformed. Stand-ins (null, NaN) never get past this. */
export function readCase<Value>(raw: unknown, read: (object: RawObject) => Value): { readonly value: Value } & Ignored {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) throw new Refusal('field-missing', { field: '', given: kindOf(raw), needed: 'an object' })
  const complaints = new Complaints(), object = new RawObject(complaints, '', raw)
  const value = read(object)
  object.close()
  complaints.refuseAny()
  return { value, ignored: complaints.ignored }
}

const kindOf = (raw: unknown): string | null => (raw === null || raw === undefined ? null : Array.isArray(raw) ? 'a list' : `a ${typeof raw}`)
