import { Refusal } from '#model/refusal.ts'
import { readOrFinding } from '#engine/inspect/read-or-finding.ts'
import type { Cell } from '#engine/inspect/cells.ts'
import { aboveUm, type CheckBody, zeroMmOf } from '#engine/inspect/check-readings.ts'
import { type Checked, checkedOf } from '#engine/inspect/checked.ts'
import { barLengthMm, gatherDraft } from '#engine/inspect/gather-draft.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import type { ReadCell, Said, TypedCheck } from '#engine/inspect/read-cell.ts'
import type { BareUnit } from '#engine/inspect/read-reading.ts'

export type DraftRead = {
  /** In the order of entry. */
  readonly cells: readonly ReadCell[]
  /** What is wrong outside the cells, by field: `zero`, `closing`, `temperature`, `places[2]`, `looks.<bar>.feeler`, `bars[0].length`. */
  readonly wrong: { readonly [field: string]: Said }
  /** What a number without a unit means in a cell. */
  readonly bareUnit: BareUnit
  /** What `um` counts from; null: nothing was read yet. */
  readonly zeroMm: number | null
  /** What the readings so far say; null without any. */
  readonly answer: Checked | null
}

/**
 * What a hand has typed so far, read cell by cell; never throws for it. A reading that is asked about says nothing of its bar
 * until that is answered: one slip would drown all others.
 *
 * @param kept  readings that were asked about and are meant as they stand, by `askedOf`
 */
export function readDraft(draft: TypedCheck, facts: InspectFacts, kept: ReadonlySet<string> = noneKept): DraftRead {
  const isOpen = (cell: ReadCell): boolean => cell.asks !== null && !kept.has(askedOf(cell))
  const { cells, wrong, bareUnit, body } = gatherDraft(draft, facts, (cell) => !isOpen(cell)), zeroMm = body.readings.length > 0 || body.zero ? zeroMmOf(body) : null
  const answer = body.readings.length + body.looks.length === 0 ? null
    : checkedOf({ ...body, atIso: facts.today }, { limitsUm: facts.limitsUm, lengthMmOf: (bar) => lengthMmOf(draft, facts, bar) })
  return { cells: cells.map((cell) => ({ ...cell, asks: isOpen(cell) ? cell.asks : null, um: cell.heightMm === null || zeroMm === null ? cell.um : aboveUm(cell.heightMm, zeroMm) })), wrong, bareUnit, zeroMm, answer }
}

/** What was asked about: this text in this cell. */
export const askedOf = ({ cell, text }: Pick<ReadCell, 'cell' | 'text'>): string => `${cell.key} ${text}`

const noneKept: ReadonlySet<string> = new Set()

/**
 * A finished check out of what was typed. Cells of further repeats may be empty; each place needs one reading.
 *
 * @throws Refusal with what is wrong first, of a cell with its key in `cell`; `reading-missing`; `too-few-bars`; `nothing-checked`
 */
export function checkFromDraft(draft: TypedCheck, facts: InspectFacts): CheckBody {
  const { cells, wrong, body } = gatherDraft(draft, facts)
  if (draft.form.bars.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: 0, needed: 1 })
  for (const said of [...Object.values(wrong), ...cells.flatMap((cell) => cell.wrong ?? [])]) throw new Refusal(said.code, said.facts)
  const read = new Set(body.readings.map(placeOf)), missing = cells.find(({ cell }) => !read.has(placeOf(cell)))
  if (missing) {
    const { key, bar, station, line, face } = missing.cell
    throw new Refusal('reading-missing', { field: 'readings', given: body.readings.length, needed: cells.length, cell: key, bar, station, line, face })
  }
  if (body.readings.length + body.looks.length === 0) throw new Refusal('nothing-checked', { field: 'looks', given: 0, needed: 1 })
  return body
}

/** Null as well while it is being typed. */
const lengthMmOf = (draft: TypedCheck, facts: InspectFacts, bar: string): number | null => readOrFinding(() => barLengthMm(draft, facts, bar, 'length'))[0]

const placeOf = ({ bar, line, face, station }: Pick<Cell, 'bar' | 'line' | 'face' | 'station'>): string => `${bar}/${line}/${face}/${station}`
