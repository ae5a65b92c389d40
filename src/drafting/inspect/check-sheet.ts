import { standingApart } from '#drafting/apart.ts'
import { boxOf, lineOf, moved, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm, wrapped } from '#drafting/lettering.ts'
import { barSide } from '#drafting/inspect/bar-side.ts'
import type { Paper } from '#drafting/paper.ts'
import { type Block, blockPieces, type Laid, spaced } from '#drafting/paragraph.ts'
import { type Named, namedPiece, sheetTextMm, together } from '#drafting/pieces.ts'
import type { Item, Scene } from '#drafting/scene.ts'
import { type SheetFrame, sheetPages, sheetRoomMm } from '#drafting/sheet-pages.ts'

/** A box to write a reading into: its number in the order of entry and its station, both from 1. */
export type SheetCell = { readonly number: number; readonly station: number }

/** Readings taken without moving on: one line along the bar, one face up, once. An empty label needs none. */
export type SheetRow = { readonly label: string; readonly cells: readonly SheetCell[] }

export type SheetBar = {
  readonly label: string
  /** `25 × 10 × 150` */
  readonly sizes: string
  readonly heightMm: number | null
  readonly lengthMm: number
  readonly stations: readonly { readonly xMm: number; readonly place: string }[]
  readonly rows: readonly SheetRow[]
}

/** Everything a sheet to fill in by pencil says, worded; plain data. */
export type CheckSheetData = SheetFrame & {
  /** Instrument, plate, blocks, zero; an empty value is a line to write on. */
  readonly taken: readonly Named[]
  readonly howTo: Block
  readonly bars: readonly SheetBar[]
  readonly markedEnd: string
  /** Boxes to tick for each bar, and the one to write the feeler into. */
  readonly looks: { readonly heading: string; readonly ticks: readonly string[]; readonly write: readonly string[] }
  /** What is read or written down at the end: closing zero, temperature. */
  readonly atTheEnd: readonly Named[]
  readonly cautions: Block
}

/** A box takes two figures, sign and decimal mark by pencil. */
const cell = { widthMm: 21.5, heightMm: 11, gapMm: 1.5 }
const sketch = { edgeMm: 12, topMm: 11.6, upMm: 7, plateMm: 2.4 }
const tickMm = 4.2

/** The boxes in the order in which they are typed in later, bar by bar; black only, as many pages as it takes. */
export function checkSheetPages(data: CheckSheetData, paper: Paper): readonly Scene[] {
  const roomMm = sheetRoomMm(paper)
  return sheetPages(data, [
    spaced(namedPiece(data.taken, roomMm, 2), 1),
    together(blockPieces(data.howTo, roomMm, sheetTextMm)), together(blockPieces(data.cautions, roomMm, sheetTextMm)),
    ...data.bars.flatMap((bar, index) => barPieces(bar, index === 0 ? data.markedEnd : '', data.looks, roomMm)),
    spaced(namedPiece(data.atTheEnd, roomMm, 2), 2),
  ], paper)
}

/** The head of a bar stays with its first row of boxes; its looks with the last. */
function barPieces(bar: SheetBar, markedEnd: string, looks: CheckSheetData['looks'], roomMm: number): readonly Laid[] {
  const head = spaced(heading(bar, markedEnd, roomMm), 2.5), rows = bar.rows.map((row) => rowPiece(row, roomMm)), look = lookPiece(looks, roomMm)
  if (rows.length === 0) return [together([head, look])]
  if (rows.length === 1) return [together([head, rows[0]!, look])]
  return [together([head, rows[0]!]), ...rows.slice(1, -1), together([rows.at(-1)!, look])]
}

/** Its name, and as it lies on the plate with its stations numbered. */
function heading(bar: SheetBar, markedEnd: string, roomMm: number): Laid {
  const barScale = Math.min(1, (roomMm - 2 * sketch.edgeMm) / bar.lengthMm), side = barSide(bar, { leftMm: sketch.edgeMm, topMm: sketch.topMm, scale: barScale, markedEnd, mostUpMm: sketch.upMm })
  const stopsOf = (texts: readonly string[]) => texts.map((text, i) => ({ preferMm: bar.stations[i]!.xMm * barScale, sizeMm: textWidthMm(text, 3, true) }))
  const numbered = standingApart(stopsOf(bar.stations.map((_, i) => String(i + 1)))), placed = standingApart(stopsOf(bar.stations.map(({ place }) => place)))
  const plateY = sketch.topMm + side.upMm, sizesMm = textWidthMm(bar.sizes, sheetTextMm)
  return {
    heightMm: plateY + sketch.plateMm + 5.5,
    draw: (x, y) => [
      lineOf([x, y], [x + roomMm, y], 'thin'),
      textOf([x, y + 3.8], shortened(bar.label, roomMm - sizesMm - 5, 4.6, true), { sizeMm: 4.6, bold: true }),
      textOf([x + roomMm, y + 3.8], bar.sizes, { sizeMm: sheetTextMm, anchor: 'end' }),
      ...side.items.map((item) => moved(item, x, y)),
      boxOf([x + sketch.edgeMm - 8, y + plateY], [x + sketch.edgeMm + bar.lengthMm * barScale + 8, y + plateY + sketch.plateMm], 'none', 'cut-face'),
      lineOf([x + sketch.edgeMm - 8, y + plateY], [x + sketch.edgeMm + bar.lengthMm * barScale + 8, y + plateY], 'outline'),
      ...bar.stations.flatMap(({ xMm, place }, index): readonly Item[] => {
        const left = x + sketch.edgeMm + xMm * barScale
        return [
          lineOf([left, y + sketch.topMm - 2], [left, y + sketch.topMm], 'thin'), ...(numbered.has(index) ? [textOf([left, y + sketch.topMm - 3.8], String(index + 1), { sizeMm: 3, anchor: 'middle', bold: true })] : []),
          ...(placed.has(index) ? [textOf([left, y + plateY + sketch.plateMm + 2.6], place, { sizeMm: 3, anchor: 'middle' })] : []),
        ]
      }),
    ],
  }
}

/** Boxes side by side behind their label, on as many lines as they need, number and station small in each. */
function rowPiece({ label, cells }: SheetRow, roomMm: number): Laid {
  const labelMm = label === '' ? 0 : 30, stepMm = cell.widthMm + cell.gapMm, across = Math.floor((roomMm - labelMm + cell.gapMm) / stepMm)
  const lines = Math.max(1, Math.ceil(cells.length / across)), said = wrapped(label, labelMm - 2, 3.2)
  return {
    heightMm: Math.max(lines * (cell.heightMm + cell.gapMm), said.length * 4.2) + 1,
    draw: (x, y) => [
      ...said.map((line, i) => textOf([x, y + 2.4 + i * 4.2], line, { sizeMm: 3.2 })),
      ...cells.flatMap(({ number, station }, index): readonly Item[] => {
        const left = x + labelMm + (index % across) * stepMm, top = y + Math.floor(index / across) * (cell.heightMm + cell.gapMm)
        return [
          boxOf([left, top], [left + cell.widthMm, top + cell.heightMm], 'outline', 'none'),
          textOf([left + 1.2, top + 2.4], String(number), { sizeMm: 3.2, bold: true }),
          textOf([left + cell.widthMm - 1.2, top + 2.4], `(${station})`, { sizeMm: 2.8, anchor: 'end' }),
        ]
      }),
    ],
  }
}

/** Boxes to tick one after the other, then lines to write on; on a further line where one is full. */
function lookPiece({ heading: name, ticks, write }: CheckSheetData['looks'], roomMm: number): Laid {
  const entries = [
    { text: name, widthMm: textWidthMm(name, sheetTextMm, true) + 2.5, kind: 'name' as const },
    ...ticks.map((text) => ({ text, widthMm: textWidthMm(text, sheetTextMm) + tickMm + 3, kind: 'tick' as const })),
    ...write.map((text) => ({ text, widthMm: textWidthMm(text, sheetTextMm) + 12, kind: 'write' as const })),
  ]
  let x0 = 0, row = 0
  const placed = entries.map((entry) => {
    if (x0 > 0 && x0 + entry.widthMm > roomMm) { x0 = 0; row += 1 }
    x0 += entry.widthMm
    return { ...entry, left: x0 - entry.widthMm, row }
  })
  const lineMm = 6.4
  return {
    heightMm: (row + 1) * lineMm,
    draw: (x, y) => placed.flatMap(({ text, kind, left, row: line, widthMm }): readonly Item[] => {
      const middle = y + (line + 0.5) * lineMm
      switch (kind) {
        case 'name': return [textOf([x + left, middle], text, { sizeMm: sheetTextMm, bold: true })]
        case 'tick': return [boxOf([x + left, middle - tickMm / 2], [x + left + tickMm, middle + tickMm / 2], 'outline', 'none'), textOf([x + left + tickMm + 1.5, middle], text, { sizeMm: sheetTextMm })]
        case 'write': return [textOf([x + left, middle], text, { sizeMm: sheetTextMm }), lineOf([x + left + textWidthMm(text, sheetTextMm) + 1.5, middle + 2.2], [x + left + widthMm - 3, middle + 2.2], 'thin')]
      }
    }),
  }
}
