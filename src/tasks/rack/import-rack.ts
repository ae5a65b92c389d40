import { deedOfNewBars, type NewBar } from '#engine/rack/new-bars.ts'
import type { Finding } from '#model/finding.ts'
import type { LengthUnit } from '#model/length.ts'
import type { Complaint, RackImport } from '#model/rack-import.ts'
import { firstChange } from '#model/record-fields.ts'
import { Refusal } from '#model/refusal.ts'
import { keepDeed } from '#store/deeds.ts'
import { importUnder, keepImport } from '#store/imports.ts'
import { bearersOf, recordOf } from '#store/records.ts'
import { atOneMoment, inTransaction, type Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'
import { type CsvBar, csvBarsFrom } from '#tasks/rack/csv-bars.ts'
import { columnsFrom } from '#tasks/rack/csv-columns.ts'
import { csvRecordsFrom } from '#tasks/rack/csv-records.ts'
import { csvTextFrom } from '#tasks/rack/csv-text.ts'
import { slotsNamed } from '#tasks/rack/slots-named.ts'

/** A file of bars: its bytes, or its text. `unit` is what sizes are in where the file does not say; left out: the shop's. */
export type RackFile = {
  /** Whoever sends it makes the id: sent again after an answer that was lost, it is answered and not taken in twice. */
  readonly id: string
  readonly csv: Uint8Array | string
  readonly unit?: LengthUnit
  readonly dryRun?: boolean
  /** Told when nothing is amiss and the file is being taken in: how many bars. */
  readonly onRead?: (bars: number) => void
}

/** Bars a file may hold. */
const mostLines = 20_000
/** Complaints that are told one by one; there may be more, and `count` says how many. */
const mostTold = 1000

/**
 * Takes in a file of bars (docs/rack-csv.md): all of it, or nothing and every complaint.
 *
 * Bars enter as `look first` (or as drill bars) with marked sizes. Bars of one file with the same text under mates become
 * mates of each other and of no one else. A slot is found by its name or made. What came in under its id before gets the
 * answer of that time, on a dry run too.
 *
 * @throws Refusal `csv-not-imported` with `complaints` (the first 1000) and their `count`; `id-used-twice`
 */
export async function importRack(store: Store, { id, csv, unit, dryRun = false, onRead }: RackFile, by: Maker): Promise<RackImport> {
  const { text, oldText } = csvTextFrom(csv), imported = { text, unit: unit ?? null }
  const { bars, complaints, width } = readBars(text, unit ?? (await recordOf(store, 'shop', 'shop')).units.length)
  return (dryRun ? atOneMoment : inTransaction)(store, async (tx) => {
    const before = await importUnder(tx, id, imported)
    if (before) return before
    const all = [...complaints, ...await codesOnOthers(tx, bars)]
    if (all.length > 0) {
      const told = all.sort((a, b) => a.line - b.line).slice(0, mostTold)
      throw new Refusal('csv-not-imported', { complaints: told, count: all.length })
    }
    if (!dryRun) onRead?.(bars.length)
    const slots = await slotsNamed(tx, by)
    const mates = new Map<string, string>()
    for (const bar of bars) if (bar.mates !== '' && !mates.has(bar.mates)) mates.set(bar.mates, by.newId())
    const newBars = bars.map(({ line: _line, mates: matesName, slot, code, ...bar }): NewBar =>
      ({ ...bar, id: by.newId(), code: code === '' ? by.newCode() : code, matesId: mates.get(matesName) ?? null, slotId: slots.idOf(slot) }))
    const heights = bars.map((bar) => bar.heightMm)
    const answer: RackImport = {
      dryRun, bars: bars.length, mates: mates.size, notes: notesOn(width, oldText),
      newSlots: slots.made.map((change) => change.fields['name']!.value as string),
      lowestMm: heights.reduce((a, b) => Math.min(a, b)), highestMm: heights.reduce((a, b) => Math.max(a, b)),
    }
    if (!dryRun) {
      const deed = deedOfNewBars(newBars, by)
      const newMates = [...mates].map(([name, matesId]) => firstChange('mates', matesId, { name, note: '' }, by))
      await keepDeed(tx, { ...deed, changes: [...slots.made, ...newMates, ...deed.changes] })
      await keepImport(tx, id, imported, answer, by)
    }
    return answer
  })
}

function readBars(text: string, unit: LengthUnit): { readonly bars: readonly CsvBar[]; readonly complaints: readonly Complaint[]; readonly width: boolean } {
  const wrong = (line: number, code: string, given: Complaint['given'] = null, needed: Complaint['needed'] = null): Complaint =>
    ({ line, column: null, code, given, needed })
  const zero = text.indexOf('\0')
  if (zero >= 0) return { bars: [], complaints: [wrong(text.slice(0, zero).split(/\r\n|\n|\r/).length, 'csv-not-text')], width: false }
  const { records, brokenLines } = csvRecordsFrom(text)
  const broken = brokenLines.map((line) => wrong(line, 'quotes-broken'))
  const [head, ...lines] = records
  if (!head) return { bars: [], complaints: broken.length > 0 ? broken : [wrong(1, 'file-empty')], width: false }
  const columns = columnsFrom(head)
  const complaints = [...broken, ...columns.complaints]
  if (lines.length > mostLines) return { bars: [], complaints: [...complaints, wrong(lines[mostLines]!.line, 'too-many-lines', lines.length, mostLines)], width: columns.width }
  if (lines.length === 0 && complaints.length === 0) complaints.push(wrong(head.line, 'no-bars-in-file'))
  const read = csvBarsFrom(lines, head, columns, unit)
  return { bars: read.bars, complaints: [...complaints, ...read.complaints], width: columns.width }
}

/** Codes that a bar or slot of the shop bears already. */
async function codesOnOthers(store: Store, bars: readonly CsvBar[]): Promise<Complaint[]> {
  const lineOf = new Map(bars.filter((bar) => bar.code !== '').map((bar) => [bar.code, bar.line]))
  return (await bearersOf(store, [...lineOf.keys()])).map(({ code }) => ({ line: lineOf.get(code)!, column: 'code', code: 'code-used-twice', given: code, needed: null }))
}

function notesOn(width: boolean, oldText: boolean): Finding[] {
  return [
    ...(width ? [{ code: 'width-taken-as-height', facts: {} }] : []),
    ...(oldText ? [{ code: 'read-as-old-text', facts: {} }] : []),
  ]
}
