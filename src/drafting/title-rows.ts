import { lineOf, textOf } from '#drafting/items.ts'
import { fitted, shortened } from '#drafting/lettering.ts'
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

/** A value too long for the cell is lettered smaller, and only then cut. */
function cell({ label, value }: TitleCell, x: number, y: number, widthMm: number): readonly Item[] {
  const room = widthMm - 3, said = fitted(value, room, [4.6, 4, 3.4, 3], true)
  return [
    textOf([x + 1.5, y + 2.7], shortened(label, room, 3), { sizeMm: 3 }),
    ...(value === '' ? [] : [textOf([x + 1.5, y + 8], said.text, { sizeMm: said.sizeMm, bold: true })]),
  ]
}
