import type { RecordKind } from '#model/change.ts'
import { readField } from '#model/record-fields.ts'

/** A text of a record as typed, without spaces around it; left out: empty. @throws Refusal `value-not-allowed` where it is too long or may not be empty */
export function readText(kind: RecordKind, field: string, typed = '', path = field): string {
  return readField(kind, field, typed.trim(), path) as string
}
