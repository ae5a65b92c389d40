import type { Complaint } from '#model/rack-import.ts'
import { Refusal } from '#model/refusal.ts'
import type { TypedReading } from '#tasks/inspect/record-check.ts'
import { unguarded } from '#tasks/rack/csv-guard.ts'
import { csvRecordsFrom } from '#tasks/rack/csv-records.ts'
import { csvTextFrom } from '#tasks/rack/csv-text.ts'

const heads = ['bar', 'reading', 'face', 'line', 'repeat'] as const
type Head = (typeof heads)[number]

/** Readings typed into a spreadsheet (docs/checks-csv.md), in the order of the lines. @throws Refusal `csv-not-imported` with `complaints` and their `count` */
export function readingsFromCsv(csv: Uint8Array | string): readonly TypedReading[] {
  const complaints: Complaint[] = [], complain = (line: number, column: string | null, code: string, given: Complaint['given'] = null, needed: Complaint['needed'] = null) => { complaints.push({ line, column, code, given, needed }) }
  const { records: [head, ...lines], brokenLines } = csvRecordsFrom(csvTextFrom(csv).text)
  for (const line of brokenLines) complain(line, null, 'quotes-broken')
  if (!head && brokenLines.length === 0) complain(1, null, 'file-empty')
  const places = new Map<Head, number>()
  head?.cells.forEach((cell, at) => {
    const name = cell.trim().toLowerCase(), known = heads.find((one) => one === name)
    if (known === undefined) complain(head.line, cell.trim(), 'column-unknown', cell.trim(), [...heads])
    else if (places.has(known)) complain(head.line, known, 'column-twice', known, known)
    else places.set(known, at)
  })
  if (head) for (const needed of ['bar', 'reading'] as const) if (!places.has(needed)) complain(head.line, null, 'column-missing', null, needed)
  const readings = complaints.length > 0 ? [] : lines.flatMap(({ line, cells }): TypedReading[] => {
    const cell = (name: Head): string => unguarded((places.has(name) ? cells[places.get(name)!] ?? '' : '').trim()), before = complaints.length
    if (cells.length !== head!.cells.length) { complain(line, null, 'cells-miscounted', `${cells.length}`, head!.cells.length); return [] }
    const face = cell('face').toUpperCase(), along = cell('line'), repeat = cell('repeat')
    if (!['', 'A', 'B'].includes(face)) complain(line, 'face', 'unknown-word', face, ['A', 'B'])
    if (!['', '1', '2'].includes(along)) complain(line, 'line', 'unknown-word', along, ['1', '2'])
    if (repeat !== '' && !/^([1-9]|1\d|20)$/.test(repeat)) complain(line, 'repeat', 'unknown-word', repeat, ['1', '2', '3'])
    if (cell('bar') === '') complain(line, 'bar', 'field-missing', null, 'a bar')
    if (complaints.length > before) return []
    return [{ bar: cell('bar'), reading: cell('reading'), ...(face === '' ? {} : { face: face as 'A' | 'B' }), ...(along === '' ? {} : { line: Number(along) as 1 | 2 }), ...(repeat === '' ? {} : { repeat: Number(repeat) }) }]
  })
  if (complaints.length > 0) throw new Refusal('csv-not-imported', { complaints: complaints.slice(0, 1000), count: complaints.length })
  return readings
}
