import { stringify } from 'csv-stringify/sync'
import { type BarEvent, barEventSchema } from '#model/bar-event.ts'
import { readAs } from '#model/read-as.ts'
import type { Complaint } from '#model/rack-import.ts'
import { Refusal } from '#model/refusal.ts'
import { addEvents, eventsOf } from '#store/events.ts'
import { recordsOf } from '#store/records.ts'
import { atOneMoment, inTransaction, type Store } from '#store/store.ts'
import { csvStyle, guarded, unguarded } from '#tasks/rack/csv-guard.ts'
import { csvRecordsFrom } from '#tasks/rack/csv-records.ts'
import { csvTextFrom } from '#tasks/rack/csv-text.ts'

const heads = ['id', 'atIso', 'bar', 'code', 'name', 'kind', 'undoes', 'note', 'person', 'device'] as const
/** `code` finds a bar of another shop, `name` is told and never read back. */
const told: ReadonlySet<string> = new Set(['code', 'name'])
const mostLines = 200_000, mostTold = 1000

export type HistoryImport = { readonly dryRun: boolean; readonly events: number; readonly known: number }

/** What happened to the bars as CSV (docs/rack-json.md), oldest first, nothing lost. */
export function exportHistoryCsv(store: Store): Promise<string> {
  return atOneMoment(store, async (tx) => {
    const bars = new Map((await recordsOf(tx, 'bar')).map((bar) => [bar.id, bar]))
    const rows = (await eventsOf(tx)).map((event) => heads.map((head) => {
      if (head === 'code' || head === 'name') return guarded(bars.get(event.bar)?.[head] ?? '')
      return guarded(event[head] ?? '')
    }))
    return stringify([[...heads], ...rows], csvStyle)
  })
}

/**
 * Takes in what happened to bars: all of it, or nothing and every complaint. What is there already stays as it is. A bar is found by its id, else by its code.
 *
 * @throws Refusal `csv-not-imported` with `complaints` and their `count`; `bar-not-known`, `event-not-known`, `id-used-twice`
 */
export async function importHistoryCsv(store: Store, csv: Uint8Array | string, { dryRun = false }: { readonly dryRun?: boolean } = {}): Promise<HistoryImport> {
  const read = eventsIn(csv)
  return await (dryRun ? atOneMoment : inTransaction)(store, async (tx) => {
    const bars = await recordsOf(tx, 'bar'), ids = new Set(bars.map(({ id }) => id)), byCode = new Map(bars.map(({ id, code }) => [code, id]))
    const events = read.map(({ event, code }) => ({ ...event, bar: ids.has(event.bar) ? event.bar : byCode.get(code) ?? event.bar }))
    const lost = events.find(({ bar }) => !ids.has(bar))
    if (lost) throw new Refusal('bar-not-known', { field: 'bar', given: lost.bar })
    const before = new Set((await eventsOf(tx)).map(({ id }) => id))
    if (!dryRun) await addEvents(tx, events)
    return { dryRun, events: events.length, known: events.filter(({ id }) => before.has(id)).length }
  })
}

function eventsIn(csv: Uint8Array | string): readonly { readonly event: BarEvent; readonly code: string }[] {
  const { records: [head, ...lines], brokenLines } = csvRecordsFrom(csvTextFrom(csv).text), complaints: Complaint[] = []
  const complain = (line: number, code: string, given: Complaint['given'] = null, needed: Complaint['needed'] = null, column: string | null = null) => { complaints.push({ line, column, code, given, needed }) }
  for (const line of brokenLines) complain(line, 'quotes-broken')
  const names = head?.cells.map((cell) => cell.trim()) ?? []
  if (!head) complain(1, 'file-empty')
  names.forEach((name, at) => {
    if (!(heads as readonly string[]).includes(name)) complain(1, 'column-unknown', name, [...heads], name)
    else if (names.indexOf(name) < at) complain(1, 'column-twice', name, name, name)
  })
  if (head) for (const name of heads) if (!told.has(name) && !names.includes(name)) complain(1, 'column-missing', null, name)
  if (lines.length > mostLines) complain(lines[mostLines]!.line, 'too-many-lines', lines.length, mostLines)
  const events = complaints.length > 0 ? [] : lines.flatMap(({ line, cells }) => {
    if (cells.length !== names.length) { complain(line, 'cells-miscounted', `${cells.length}`, names.length); return [] }
    const cell = (name: string): string => unguarded(cells[names.indexOf(name)] ?? '')
    try {
      const event = readAs(barEventSchema, { ...Object.fromEntries(heads.filter((name) => !told.has(name)).map((name) => [name, cell(name)])), undoes: cell('undoes') === '' ? null : cell('undoes') })
      return [{ event, code: cell('code').toUpperCase() }]
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      complain(line, error.code, error.facts.given ?? null, error.facts.needed ?? null, typeof error.facts.field === 'string' ? error.facts.field : null)
      return []
    }
  })
  if (complaints.length > 0) throw new Refusal('csv-not-imported', { complaints: complaints.slice(0, mostTold), count: complaints.length })
  return events
}
