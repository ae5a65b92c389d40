import { boxOf, lineOf, textOf } from '#drafting/items.ts'
import { fitted, shortened, textWidthMm, wrappedWithin } from '#drafting/lettering.ts'
import { type Paper, paperEdgeMm, papers } from '#drafting/paper.ts'
import { type Laid, stacked } from '#drafting/paragraph.ts'
import type { Item, Scene } from '#drafting/scene.ts'
import { type TitleRow, titleRows, titleRowsMm } from '#drafting/title-rows.ts'

/** What stands on every sheet of a print: what it is, its code in a box, and the cells at its foot. */
export type SheetFrame = {
  readonly title: string
  readonly description: string
  readonly heading: string
  /** Under the heading, in one line. */
  readonly under: string
  readonly code: { readonly label: string; readonly value: string }
  readonly foot: readonly TitleRow[]
}

const headMm = 17
const padMm = 4

/** Width for the pieces of a sheet. */
export const sheetRoomMm = (paper: Paper): number => papers[paper].widthMm - 2 * paperEdgeMm - 2 * padMm

/** Height for the pieces of one sheet. */
export const sheetUpMm = ({ foot }: Pick<SheetFrame, 'foot'>, paper: Paper): number => papers[paper].heightMm - 2 * paperEdgeMm - headMm - titleRowsMm(foot.length) - padMm

/** As many sheets as the pieces need, numbered `1 / 3`; a piece is never broken, and nothing is left out. */
export function sheetPages(frame: SheetFrame, pieces: readonly Laid[], paper: Paper): readonly Scene[] {
  const top = paperEdgeMm + headMm + padMm / 2, end = top + sheetUpMm(frame, paper) + padMm / 2
  const pages: (readonly Item[])[] = []
  for (let rest = pieces; rest.length > 0 || pages.length === 0;) {
    const done = stacked(rest, paperEdgeMm + padMm, top, end), stuck = done.items.length === 0 && done.rest.length === rest.length && rest.length > 0
    // A piece higher than a sheet runs over the edge rather than be dropped.
    pages.push(stuck ? rest[0]!.draw(paperEdgeMm + padMm, top) : done.items)
    rest = stuck ? rest.slice(1) : done.rest
  }
  return pages.map((items, index) => page(frame, items, `${index + 1} / ${pages.length}`, paper))
}

function page(frame: SheetFrame, items: readonly Item[], number: string, paper: Paper): Scene {
  const { widthMm, heightMm } = papers[paper]
  return {
    title: frame.title, description: frame.description, widthMm, heightMm, fields: [],
    items: [
      boxOf([paperEdgeMm, paperEdgeMm], [widthMm - paperEdgeMm, heightMm - paperEdgeMm], 'outline', 'none'),
      ...head(frame, number, widthMm), ...items, ...titleRows(frame.foot, paper),
    ],
  }
}

/** In one line as large as it goes, else in two. */
function headingLines(heading: string, left: number, roomMm: number): readonly Item[] {
  const twoMm = 4.4
  if (textWidthMm(heading, twoMm, true) > roomMm) return wrappedWithin(heading, 2, roomMm, twoMm, true).map((line, at) => textOf([left, paperEdgeMm + 3.6 + 4.8 * at], line, { sizeMm: twoMm, bold: true }))
  const said = fitted(heading, roomMm, [7, 5.6, twoMm], true)
  return [textOf([left, paperEdgeMm + 6], said.text, { sizeMm: said.sizeMm, bold: true })]
}

function head({ heading, under, code }: SheetFrame, number: string, widthMm: number): readonly Item[] {
  const left = paperEdgeMm + padMm, right = widthMm - paperEdgeMm, boxMm = Math.max(34, textWidthMm(code.value, 6, true) + 5), room = right - boxMm - 20 - left
  return [
    ...headingLines(heading, left, room),
    textOf([left, paperEdgeMm + 12.8], shortened(under, room, 3.8), { sizeMm: 3.8 }),
    textOf([right - boxMm - 5, paperEdgeMm + headMm / 2], number, { sizeMm: 4.2, anchor: 'end' }),
    boxOf([right - boxMm - 2.5, paperEdgeMm + 2.5], [right - 2.5, paperEdgeMm + headMm - 2.5], 'outline', 'none'),
    textOf([right - 2.5 - boxMm / 2, paperEdgeMm + 6.8], code.value, { sizeMm: 6, bold: true, anchor: 'middle' }),
    textOf([right - 2.5 - boxMm / 2, paperEdgeMm + 12], code.label, { sizeMm: 3, anchor: 'middle' }),
    lineOf([paperEdgeMm, paperEdgeMm + headMm], [right, paperEdgeMm + headMm], 'outline'),
  ]
}
