import { lineOf, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import { type Paper, paperEdgeMm, papers } from '#drafting/paper.ts'
import type { Item } from '#drafting/scene.ts'

type Cell = { readonly label: string; readonly value: string }

/** The cells at the foot of a sheet; a value that is not known is an empty text, to be filled in by hand. */
export type TitleBlock = {
  readonly shop: Cell; readonly part: Cell; readonly operation: Cell; readonly code: Cell
  readonly vise: Cell; readonly jawSet: Cell; readonly pair: Cell; readonly slot: Cell; readonly date: Cell; readonly initials: Cell
}

const rowMm = 12
export const titleBlockMm = 2 * rowMm

/** Cells of each row with their share of its width. */
const rows: readonly (readonly (readonly [name: keyof TitleBlock, share: number])[])[] = [
  [['shop', 0.26], ['part', 0.3], ['operation', 0.24], ['code', 0.2]],
  [['vise', 0.2], ['jawSet', 0.2], ['pair', 0.16], ['slot', 0.1], ['date', 0.2], ['initials', 0.14]],
]

/** Two rows along the foot of the frame, the name of each cell small above its value. */
export function titleBlock(block: TitleBlock, paper: Paper): readonly Item[] {
  const { widthMm, heightMm } = papers[paper], innerMm = widthMm - 2 * paperEdgeMm
  return rows.flatMap((cells, row): readonly Item[] => {
    const y = heightMm - paperEdgeMm - titleBlockMm + row * rowMm
    let share = 0
    return [
      lineOf([paperEdgeMm, y], [widthMm - paperEdgeMm, y], 'outline'),
      ...cells.flatMap(([name, width], index): readonly Item[] => {
        const x = paperEdgeMm + share * innerMm
        share += width
        return [...(index > 0 ? [lineOf([x, y], [x, y + rowMm], 'thin')] : []), ...cell(block[name], x, y, width * innerMm)]
      }),
    ]
  })
}

/** A value too long for the cell is lettered smaller, and only then cut. */
function cell({ label, value }: Cell, x: number, y: number, widthMm: number): readonly Item[] {
  const room = widthMm - 3, sizeMm = [4.6, 4, 3.4].find((size) => textWidthMm(value, size, true) <= room) ?? 3
  return [
    textOf([x + 1.5, y + 2.7], shortened(label, room, 3), { sizeMm: 3 }),
    ...(value === '' ? [] : [textOf([x + 1.5, y + 8], shortened(value, room, sizeMm, true), { sizeMm, bold: true })]),
  ]
}
