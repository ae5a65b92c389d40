import type { LengthUnit } from '#model/length.ts'
import type { Complaint } from '#model/rack-import.ts'
import type { CsvRecord } from '#tasks/rack/csv-records.ts'

export const columnNames = ['code', 'name', 'height', 'thickness', 'length', 'mates', 'slot', 'state', 'note'] as const
export type ColumnName = (typeof columnNames)[number]

/** A column of the file: its head as written, and the unit its head names. */
export type Column = { readonly at: number; readonly head: string; readonly unit: LengthUnit | null }

export type Columns = {
  readonly columns: { readonly [Name in ColumnName]?: Column }
  readonly width: boolean
  /** Columns without a head, as some programs leave at the end; nothing may stand in them. */
  readonly headless: readonly number[]
  readonly complaints: readonly Complaint[]
}

const sizes: readonly string[] = ['height', 'thickness', 'length']

/** Which column is which, by the first record. `width` is taken for the height, as boxes print it. */
export function columnsFrom({ line, cells }: CsvRecord): Columns {
  const columns: { [Name in ColumnName]?: Column } = {}
  const complaints: Complaint[] = []
  const headless: number[] = []
  let width = false
  cells.forEach((cell, at) => {
    const head = cell.trim()
    if (head === '') { headless.push(at); return }
    const { word, unit } = headOf(head)
    const name = columnNames.find((one) => one === (word === 'width' ? 'height' : word))
    if (name === undefined || (unit !== null && !sizes.includes(name))) {
      complaints.push({ line, column: head, code: 'column-unknown', given: head.slice(0, 60), needed: [...columnNames] })
    } else if (columns[name]) complaints.push({ line, column: head, code: 'column-twice', given: columns[name].head.slice(0, 60), needed: name })
    else {
      columns[name] = { at, head: head.slice(0, 60), unit }
      width ||= word === 'width'
    }
  })
  for (const name of ['height', 'thickness', 'length'] as const) {
    if (!columns[name]) complaints.push({ line, column: null, code: 'column-missing', given: null, needed: name })
  }
  return { columns, width, headless, complaints }
}

/** `Height (mm)`, `height_mm`, `height [in]`, `height in` → the word and the unit. */
function headOf(head: string): { readonly word: string; readonly unit: LengthUnit | null } {
  const plain = head.toLowerCase().replaceAll(/[_()[\]]+/g, ' ').trim()
  const parts = /^(\S+?)\s*(?:\s(mm|in|inch|inches)|(″|"))?$/.exec(plain)
  if (!parts) return { word: plain, unit: null }
  const unit = parts[2] ?? parts[3]
  return { word: parts[1]!, unit: unit === undefined ? null : unit === 'mm' ? 'mm' : 'in' }
}
