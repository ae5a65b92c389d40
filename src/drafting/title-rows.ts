import { lineOf, textOf } from '#drafting/items.ts'
import { fitted, shortened, textWidthMm, wrappedWithin } from '#drafting/lettering.ts'
import { type Paper, paperEdgeMm, papers } from '#drafting/paper.ts'
import type { Item } from '#drafting/scene.ts'

/** A value that is not known is an empty text, to be filled in by hand. */
export type TitleCell = { readonly label: string; readonly value: string }
export type TitleRow = readonly (TitleCell & { readonly share: number })[]

const rowMm = 12
export const titleRowsMm = (rows: number): number => rows * rowMm

/** Rows of cells along the foot of the frame, each as wide as its share, the name of each cell small above its value. */
export function titleRows(rows: readonly TitleRow[], paper: Paper): readonly Item[] {
  const { widthMm, heightMm } = papers[paper], innerMm = widthMm - 2 * paperEdgeMm
  return rows.flatMap((cells, row): readonly Item[] => {
    const y = heightMm - paperEdgeMm - titleRowsMm(rows.length - row)
    let share = 0
    return [
      lineOf([paperEdgeMm, y], [widthMm - paperEdgeMm, y], 'outline'),
      ...cells.flatMap((one, index): readonly Item[] => {
        const x = paperEdgeMm + share * innerMm
        share += one.share
        return [...(index > 0 ? [lineOf([x, y], [x, y + rowMm], 'thin')] : []), ...cell(one, x, y, one.share * innerMm)]
      }),
    ]
  })
}

const smallMm = 3

/** A value too long for the cell is lettered smaller, then broken in two lines, and only then cut. */
function cell({ label, value }: TitleCell, x: number, y: number, widthMm: number): readonly Item[] {
  const room = widthMm - 3
  return [textOf([x + 1.5, y + 2.7], shortened(label, room, smallMm), { sizeMm: smallMm }), ...(value === '' ? [] : valueIn(value, x + 1.5, y, room))]
}

function valueIn(value: string, x: number, y: number, roomMm: number): readonly Item[] {
  if (textWidthMm(value, smallMm, true) > roomMm) return wrappedWithin(value, 2, roomMm, smallMm, true).map((line, at) => textOf([x, y + 6.6 + 3.5 * at], line, { sizeMm: smallMm, bold: true }))
  const said = fitted(value, roomMm, [4.6, 4, 3.4, smallMm], true)
  return [textOf([x, y + 8], said.text, { sizeMm: said.sizeMm, bold: true })]
}
