import type { Finding } from '#model/finding.ts'
import type { Fact } from '#model/refusal.ts'

/**
 * One thing amiss in a file of bars, worded like a refusal of the same code.
 *
 * `line` as an editor counts them, from 1; `column` as its head is written in the file, null where it is about the line.
 */
export type Complaint = { readonly line: number; readonly column: string | null; readonly code: string; readonly given: Fact; readonly needed: Fact }

/** What came in from a file of bars, or on a dry run what would. */
export type RackImport = {
  readonly dryRun: boolean
  readonly bars: number
  readonly mates: number
  /** Names of the slots that were not there before. */
  readonly newSlots: readonly string[]
  readonly lowestMm: number
  readonly highestMm: number
  /** What was understood otherwise than written: `width-taken-as-height`, `read-as-old-text`. */
  readonly notes: readonly Finding[]
}
