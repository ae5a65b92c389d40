import { boxOf, lineOf, moved, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm, wrapped } from '#drafting/lettering.ts'
import { type Paper, paperEdgeMm, papers } from '#drafting/paper.ts'
import { heightOf, paragraph, spaced, stacked } from '#drafting/paragraph.ts'
import type { Item, Scene } from '#drafting/scene.ts'

export const viseCardColumns = ['pair', 'slot', 'from', 'grip', 'drill'] as const
export type ViseCardColumn = (typeof viseCardColumns)[number]

/** The card of a vise, worded: pair, slot, lowest finished height it works from, grip, largest drill clear of the bed. */
export type ViseCardData = {
  readonly title: string
  readonly description: string
  readonly vise: string
  /** Jaw set, jaw height, shop, date: small lines under the name of the vise. */
  readonly facts: readonly string[]
  readonly headings: { readonly [column in ViseCardColumn]: string }
  readonly rows: readonly { readonly [column in ViseCardColumn]: string }[]
  /** What the figures rest on, and the usual cautions: at the foot of every strip. */
  readonly notes: readonly string[]
}

/** Figures are read from a metre away: their capitals are at least 4.8 mm high (common practice, no source). */
const figuresMm = [9, 8, 7]
const smallMm = 3.4
const padMm = 3
const gapMm = 3.5
const cutMm = 6

type Strip = { readonly widthMm: number; readonly sizeMm: number; readonly columns: readonly number[] }

/** Strips to cut out and hang by the vise, black only: two on a page where the figures allow it, else one; as many pages as it takes. */
export function viseCardPages(data: ViseCardData, paper: Paper): readonly Scene[] {
  const { widthMm, heightMm } = papers[paper], innerMm = widthMm - 2 * paperEdgeMm
  const strip = stripFor(data, (innerMm - cutMm) / 2) ?? stripFor(data, innerMm) ?? squeezed(data, innerMm)
  const across = strip.widthMm * 2 <= innerMm ? 2 : 1
  const first = { topMm: paperEdgeMm, endMm: heightMm - paperEdgeMm }
  const notes = data.notes.map((note) => spaced(paragraph(note, strip.widthMm - 2 * padMm, smallMm), smallMm * 0.4))
  const rowMm = strip.sizeMm * 1.5
  const room = Math.max(1, Math.floor((first.endMm - first.topMm - headMm(data, strip) - heightOf(notes) - 2 * padMm) / rowMm))
  const parts = Array.from({ length: Math.max(1, Math.ceil(data.rows.length / room)) }, (_, i) => data.rows.slice(i * room, (i + 1) * room))
  return Array.from({ length: Math.ceil(parts.length / across) }, (_, pageIndex): Scene => ({
    title: data.title, description: data.description, widthMm, heightMm, fields: [],
    items: parts.slice(pageIndex * across, (pageIndex + 1) * across).flatMap((rows, index) => {
      const x = paperEdgeMm + index * (strip.widthMm + cutMm), number = pageIndex * across + index + 1
      const items = stripItems(data, strip, rows, `${number} / ${parts.length}`, notes)
      return [...items.map((item) => moved(item, x, paperEdgeMm)), ...(index > 0 ? [lineOf([x - cutMm / 2, paperEdgeMm], [x - cutMm / 2, heightMm - paperEdgeMm], 'hidden')] : [])]
    }),
  }))
}

/** The largest figures with which all columns fit the width. */
function stripFor(data: ViseCardData, widthMm: number): Strip | null {
  for (const sizeMm of figuresMm) {
    const columns = naturalColumns(data, sizeMm)
    const needed = columns.reduce((sum, width) => sum + width, 0) + gapMm * (columns.length - 1) + 2 * padMm
    if (needed <= widthMm) return { widthMm, sizeMm, columns: columns.map((width) => width + (widthMm - needed) / columns.length) }
  }
  return null
}

/** Names too long even for the whole page are cut in the column of the pairs. */
function squeezed(data: ViseCardData, widthMm: number): Strip {
  const sizeMm = figuresMm.at(-1)!, [pair, ...others] = naturalColumns(data, sizeMm)
  const left = widthMm - 2 * padMm - others.reduce((sum, width) => sum + width + gapMm, 0)
  return { widthMm, sizeMm, columns: [Math.min(pair!, Math.max(20, left)), ...others] }
}

function naturalColumns({ rows, headings }: ViseCardData, sizeMm: number): readonly number[] {
  return viseCardColumns.map((column) => {
    const heading = Math.max(...headings[column].split(/\s+/).map((word) => textWidthMm(word, smallMm)))
    return Math.max(heading, ...rows.map((row) => textWidthMm(row[column], sizeMm, column === 'pair')))
  })
}

const headingLines = (data: ViseCardData, { columns }: Strip): readonly (readonly string[])[] =>
  viseCardColumns.map((column, index) => wrapped(data.headings[column], columns[index]! + 0.01, smallMm))

const headMm = (data: ViseCardData, strip: Strip): number =>
  14 + data.facts.length * smallMm * 1.3 + 2 + Math.max(...headingLines(data, strip).map((lines) => lines.length)) * smallMm * 1.3 + 1.5

function stripItems(
  data: ViseCardData, strip: Strip, rows: ViseCardData['rows'], number: string, notes: Parameters<typeof stacked>[0],
): readonly Item[] {
  const { widthMm, sizeMm, columns } = strip, rowMm = sizeMm * 1.5, head = headMm(data, strip), foot = head + rows.length * rowMm
  const lefts = columns.map((_, index) => padMm + columns.slice(0, index).reduce((sum, width) => sum + width + gapMm, 0))
  const headings = headingLines(data, strip)
  const said = stacked(notes, padMm, foot + 0.5, Infinity)
  const at = (index: number): number => (index < 2 ? lefts[index]! : lefts[index]! + columns[index]!)
  const anchor = (index: number) => (index < 2 ? ('start' as const) : ('end' as const))
  return [
    boxOf([0, 0], [widthMm, Math.max(said.endMm, foot) + padMm], 'outline', 'none'),
    textOf([padMm, 7.5], shortened(data.vise, widthMm - 2 * padMm - 14, 9, true), { sizeMm: 9, bold: true }),
    textOf([widthMm - padMm, 7.5], number, { sizeMm: smallMm, anchor: 'end' }),
    ...data.facts.map((fact, index) => textOf([padMm, 14 + (index + 0.5) * smallMm * 1.3], shortened(fact, widthMm - 2 * padMm, smallMm), { sizeMm: smallMm })),
    ...headings.flatMap((lines, index) => lines.map((line, i) => textOf([at(index), head - 1.5 - (lines.length - i - 0.5) * smallMm * 1.3], line, { sizeMm: smallMm, anchor: anchor(index) }))),
    lineOf([0, head], [widthMm, head], 'outline'),
    ...rows.flatMap((row, rowIndex): readonly Item[] => {
      const y = head + (rowIndex + 0.5) * rowMm
      return [
        ...viseCardColumns.map((column, index) =>
          textOf([at(index), y], shortened(row[column], columns[index]! + 0.01, sizeMm, column === 'pair'), { sizeMm, bold: column === 'pair', anchor: anchor(index) })),
        lineOf([0, y + rowMm / 2], [widthMm, y + rowMm / 2], 'thin'),
      ]
    }),
    ...said.items,
  ]
}
