import { lineOf, textOf } from '#drafting/items.ts'
import { wrapped } from '#drafting/lettering.ts'
import type { Laid } from '#drafting/paragraph.ts'
import { sheetTextMm } from '#drafting/pieces.ts'
import type { Item } from '#drafting/scene.ts'

/** Rows with cells to write in by pencil: a name in front, then under each head an empty cell, or what was read already. */
export type BlankTable = { readonly heads: readonly string[]; readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[] }

const nameMm = 26, rowMm = 8, lineMm = 4.5

/** One piece for each row, the heads with the first, so that a long list goes on on the next sheet. */
export function blankPieces({ heads, rows }: BlankTable, widthMm: number): readonly Laid[] {
  const eachMm = (widthMm - nameMm) / Math.max(1, heads.length), said = heads.map((head) => wrapped(head, eachMm - 2, sheetTextMm, true)), headMm = Math.max(1, ...said.map((lines) => lines.length)) * lineMm + 1.5
  const headed = (x: number, y: number): readonly Item[] => [
    ...said.flatMap((lines, column) => lines.map((line, i) => textOf([x + nameMm + column * eachMm + 1, y + (i + 0.5) * lineMm], line, { sizeMm: sheetTextMm, bold: true }))),
    lineOf([x, y + headMm], [x + widthMm, y + headMm], 'outline'),
  ]
  const row = ({ name, cells }: BlankTable['rows'][number], x: number, y: number): readonly Item[] => [
    textOf([x, y + rowMm / 2], name, { sizeMm: sheetTextMm, bold: true }), lineOf([x, y + rowMm], [x + widthMm, y + rowMm], 'thin'),
    ...heads.flatMap((_head, column): readonly Item[] => [lineOf([x + nameMm + column * eachMm - 1, y], [x + nameMm + column * eachMm - 1, y + rowMm], 'thin'), textOf([x + nameMm + column * eachMm + 1, y + rowMm / 2], cells[column] ?? '', { sizeMm: sheetTextMm })]),
  ]
  return rows.map((one, at): Laid => (at === 0 ? { heightMm: headMm + rowMm, draw: (x, y) => [...headed(x, y), ...row(one, x, y + headMm)] } : { heightMm: rowMm, draw: (x, y) => row(one, x, y) }))
}
