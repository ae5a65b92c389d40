import type { DraftFields } from '#model/check-draft.ts'
import type { Finding } from '#model/finding.ts'
import type { Cell } from '#engine/inspect/cells.ts'

/** A half-done check as it is being typed. */
export type TypedCheck = Pick<DraftFields, 'form' | 'typed' | 'looks'>

/** What is wrong with a field, or to be asked about it: worded at the door. */
export type Said = Finding

/** A cell with what its text means. `um` counts from the zero, or from the first reading where there is none. */
export type ReadCell = {
  readonly cell: Cell
  readonly text: string
  readonly um: number | null
  readonly heightMm: number | null
  readonly wrong: Said | null
  readonly asks: Said | null
}
