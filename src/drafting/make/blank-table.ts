import { lineOf, textOf } from '#drafting/items.ts'
import { wrapped } from '#drafting/lettering.ts'
import type { Laid } from '#drafting/paragraph.ts'
import { sheetTextMm } from '#drafting/pieces.ts'
import type { Item } from '#drafting/scene.ts'

/** Rows with cells to write in by pencil: a name in front, then under each head an empty cell, or what was read already. */
export type BlankTable = { readonly heads: readonly string[]; readonly rows: readonly BlankRow[] }
type BlankRow = { readonly name: string; readonly cells: readonly string[] }

const nameMm = 26, rowMm = 8, lineMm = 4.5
/** The narrowest cell that takes `44.012` by pencil. */
const leastCellMm = 18
/** So many lines at the most are one piece under their own heads: whatever sheet they come to, it says what is to be written in. */
const linesTogether = 8

/** A few rows stand below each other; of many, as many side by side as there is room for, so that mates stand in one line. */
export function blankPieces({ heads, rows }: BlankTable, widthMm: number): readonly Laid[] {
  const room = Math.max(1, Math.floor(widthMm / (nameMm + Math.max(1, heads.length) * leastCellMm))), across = rows.length > linesTogether ? room - (room > 2 ? room % 2 : 0) : 1
  const lines = inGroups(rows, across), blocks = Math.ceil(lines.length / linesTogether)
  return inGroups(lines, Math.ceil(lines.length / Math.max(1, blocks))).map((few) => block(heads, few, widthMm / across))
}

/** Lines of rows under their heads. */
function block(heads: readonly string[], lines: readonly (readonly BlankRow[])[], groupMm: number): Laid {
  const eachMm = (groupMm - nameMm) / Math.max(1, heads.length), said = heads.map((head) => wrapped(head, eachMm - 2, sheetTextMm, true)), headMm = Math.max(1, ...said.map((text) => text.length)) * lineMm + 1.5
  const headed = (x: number, y: number): readonly Item[] => [
    ...said.flatMap((text, column) => text.map((line, i) => textOf([x + nameMm + column * eachMm + 1, y + (i + 0.5) * lineMm], line, { sizeMm: sheetTextMm, bold: true }))),
    lineOf([x, y + headMm], [x + groupMm, y + headMm], 'outline'),
  ]
  const row = ({ name, cells }: BlankRow, x: number, y: number, inMm: number): readonly Item[] => [
    ...(inMm > 0 ? [lineOf([x, y], [x, y + rowMm], 'outline')] : []), textOf([x + inMm, y + rowMm / 2], name, { sizeMm: sheetTextMm, bold: true }), lineOf([x, y + rowMm], [x + groupMm, y + rowMm], 'thin'),
    ...heads.flatMap((_head, column): readonly Item[] => [lineOf([x + nameMm + column * eachMm - 1, y], [x + nameMm + column * eachMm - 1, y + rowMm], 'thin'), textOf([x + nameMm + column * eachMm + 1, y + rowMm / 2], cells[column] ?? '', { sizeMm: sheetTextMm })]),
  ]
  return {
    heightMm: headMm + lines.length * rowMm,
    draw: (x, y) => [
      ...Array.from({ length: lines[0]?.length ?? 0 }, (_, k) => headed(x + k * groupMm, y)).flat(),
      ...lines.flatMap((line, at) => line.flatMap((one, k) => row(one, x + k * groupMm, y + headMm + at * rowMm, k === 0 ? 0 : 1.5))),
    ],
  }
}

const inGroups = <One>(list: readonly One[], size: number): readonly (readonly One[])[] => Array.from({ length: list.length === 0 ? 0 : Math.ceil(list.length / size) }, (_, k) => list.slice(k * size, (k + 1) * size))
