import { type Check, checkSchema } from '#model/check.ts'
import type { ChecksFile, ChecksImport } from '#model/checks-file.ts'
import { readAs } from '#model/read-as.ts'
import type { Complaint } from '#model/rack-import.ts'
import { Refusal } from '#model/refusal.ts'
import { addChecks, checksOf } from '#store/checks.ts'
import { recordsOf } from '#store/records.ts'
import { atOneMoment, inTransaction, type Store } from '#store/store.ts'
import { checkFromParts, checkHeads, checkPart, type Loose, lookPart, readingPart, valueFrom } from '#tasks/inspect/check-columns.ts'
import { barsIn } from '#tasks/inspect/export-checks.ts'
import { unguarded } from '#tasks/rack/csv-guard.ts'
import { type CsvRecord, csvRecordsFrom } from '#tasks/rack/csv-records.ts'
import { csvTextFrom } from '#tasks/rack/csv-text.ts'

/** Lines a file may hold, and complaints that are told one by one. */
const mostLines = 200_000, mostTold = 1000

/** A file of checks: the bytes or the text of a CSV, or the data. */
export type ChecksGiven = { readonly csv: Uint8Array | string } | { readonly file: ChecksFile }

/**
 * Takes in checks (docs/checks-csv.md): all of them, or nothing and every complaint. Checks that are there already stay as they are.
 *
 * A bar is found by its id, else by the code on its label; a bar of neither has to be in the rack first.
 *
 * @throws Refusal `csv-not-imported` with `complaints` and their `count`; of data what `readAs` refuses; `bar-not-known`, `check-not-known`, `bar-left-out`, `id-used-twice`
 */
export async function importChecks(store: Store, given: ChecksGiven, { dryRun = false }: { readonly dryRun?: boolean } = {}): Promise<ChecksImport> {
  const { checks, codes, oldText } = 'csv' in given ? fromCsv(given.csv) : { checks: given.file.checks, codes: new Map(given.file.bars.map(({ id, code }) => [id, code])), oldText: false }
  return await (dryRun ? atOneMoment : inTransaction)(store, async (tx) => {
    const bars = await recordsOf(tx, 'bar'), known = new Set(bars.map(({ id }) => id)), byCode = new Map(bars.map(({ id, code }) => [code, id]))
    const here = (bar: string): string => (known.has(bar) ? bar : byCode.get(codes.get(bar) ?? '') ?? bar)
    const before = new Set((await checksOf(tx)).map(({ id }) => id)), named = checks.map((check) => withBars(check, here))
    for (const check of named) for (const bar of barsIn(check)) if (!known.has(bar)) throw new Refusal('bar-not-known', { field: 'bar', given: codes.get(bar) ?? bar })
    if (!dryRun) await addChecks(tx, named)
    return {
      dryRun, checks: named.length, known: named.filter(({ id }) => before.has(id)).length, readings: named.reduce((sum, { readings }) => sum + readings.length, 0),
      bars: new Set(named.flatMap(barsIn)).size, notes: oldText ? [{ code: 'read-as-old-text', facts: {} }] : [],
    }
  })
}

function withBars(check: Check, here: (bar: string) => string): Check {
  const moved = <Of extends { readonly bar: string }>(one: Of): Of => ({ ...one, bar: here(one.bar) })
  return { ...check, readings: check.readings.map(moved), looks: check.looks.map(moved), zero: check.zero?.on === 'bar' ? moved(check.zero) : check.zero }
}

type FromCsv = { readonly checks: readonly Check[]; readonly codes: ReadonlyMap<string, string>; readonly oldText: boolean }

function fromCsv(csv: Uint8Array | string): FromCsv {
  const { text, oldText } = csvTextFrom(csv), complaints: Complaint[] = []
  const complain = (line: number, code: string, given: Complaint['given'] = null, needed: Complaint['needed'] = null, column: string | null = null) => { complaints.push({ line, column, code, given, needed }) }
  const { records: [head, ...lines], brokenLines } = csvRecordsFrom(text)
  for (const line of brokenLines) complain(line, 'quotes-broken')
  if (!head) complain(1, 'file-empty')
  else mindHeads(head, complain)
  if (lines.length > mostLines) complain(lines[mostLines]!.line, 'too-many-lines', lines.length, mostLines)
  const read = head && complaints.length === 0 ? checksOn(lines, head, complain) : { checks: [], codes: new Map<string, string>() }
  if (complaints.length > 0) throw new Refusal('csv-not-imported', { complaints: complaints.slice(0, mostTold), count: complaints.length })
  return { checks: read.checks, codes: read.codes, oldText }
}

type Complain = (line: number, code: string, given?: Complaint['given'], needed?: Complaint['needed'], column?: string | null) => void

function mindHeads({ line, cells }: CsvRecord, complain: Complain): void {
  const heads = cells.map((cell) => cell.trim())
  heads.forEach((head, at) => {
    if (!checkHeads.includes(head)) complain(line, 'column-unknown', head, [...checkHeads], head)
    else if (heads.indexOf(head) < at) complain(line, 'column-twice', head, head, head)
  })
  for (const head of checkHeads) if (!heads.includes(head)) complain(line, 'column-missing', null, head)
}

/** Lines of one check follow its own line; each says by its id which check it belongs to. */
function checksOn(lines: readonly CsvRecord[], head: CsvRecord, complain: Complain): { readonly checks: readonly Check[]; readonly codes: ReadonlyMap<string, string> } {
  const places = new Map(head.cells.map((cell, at) => [cell.trim(), at])), codes = new Map<string, string>()
  const open = new Map<string, { readonly line: number; readonly head: Loose; readonly looks: Lined[]; readonly readings: Lined[] }>()
  for (const { line, cells } of lines) {
    if (cells.length !== head.cells.length) { complain(line, 'cells-miscounted', `${cells.length}`, head.cells.length); continue }
    const cell = (name: string): string => cells[places.get(name)!]!, id = unguarded(cell('id')), what = cell('what'), bar = { bar: unguarded(cell('bar')) }
    if (bar.bar !== '') codes.set(bar.bar, cell('code').toUpperCase())
    const check = open.get(id)
    if (what === 'check') {
      if (check) complain(line, 'check-twice', id, check.line, 'id')
      else open.set(id, { line, head: valueFrom(checkPart, cell), looks: [], readings: [] })
    } else if (!lineKinds.includes(what)) complain(line, 'unknown-word', what, ['check', ...lineKinds], 'what')
    else if (!check) complain(line, 'check-not-begun', id, null, 'id')
    else if (what === 'look') check.looks.push({ line, value: { ...bar, ...valueFrom(lookPart, cell, 'look.') } })
    else check.readings.push({ line, value: { ...bar, ...valueFrom(readingPart, cell, 'reading.') } })
  }
  const checks = [...open.values()].flatMap(({ line, head: own, looks, readings }) => {
    try {
      return [readAs(checkSchema, checkFromParts(own, looks.map(({ value }) => value), readings.map(({ value }) => value)))]
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      const field = typeof error.facts.field === 'string' ? error.facts.field : '', inList = /^(looks|readings)\[(\d+)\]/.exec(field)
      const lined = inList && (inList[1] === 'looks' ? looks : readings)[Number(inList[2])]
      complain(lined ? lined.line : line, error.code, error.facts.given ?? null, error.facts.needed ?? null, field.replace(/^looks\[\d+\]/, 'look').replace(/^readings\[\d+\]/, 'reading'))
      return []
    }
  })
  return { checks, codes }
}

type Lined = { readonly line: number; readonly value: Loose }

const lineKinds = ['look', 'reading']
