import { plainText } from '#cli/columns.ts'
import type { Complaint } from '#model/rack-import.ts'
import type { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { sayComplaint } from '#words/say-complaint.ts'
import { sayRefusal } from '#words/say-refusal.ts'

/** A file that was not taken in: every complaint on a line of its own, then the sum of it. */
export function complained(refusal: Refusal, units: Units): string {
  const complaints = refusal.facts.complaints as unknown as readonly Complaint[], left = Number(refusal.facts.count) - complaints.length
  return [...complaints.map((one) => plainText(sayComplaint(one, units))), ...(left > 0 ? [`… and ${left} more.`] : []), sayRefusal(refusal, units)].join('\n')
}
