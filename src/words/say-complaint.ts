import type { Complaint } from '#model/rack-import.ts'
import type { Units } from '#model/shop-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'

/** One thing amiss in a file, with its line as an editor counts: `Line 3: 'Height': 'abc' is no length; …`. */
export function sayComplaint({ line, column, code, given, needed }: Complaint, units: Units): string {
  return `Line ${line}: ${sayRefusal({ code, facts: { field: column ?? '', given, needed } }, units)}`
}
