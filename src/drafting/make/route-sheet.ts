import { lineOf, textOf } from '#drafting/items.ts'
import { type BlankTable, blankPieces } from '#drafting/make/blank-table.ts'
import type { Paper } from '#drafting/paper.ts'
import { type Block, blockPieces, type Laid, paragraph, spaced } from '#drafting/paragraph.ts'
import { beside, drawingPiece, type Named, namedPiece, sheetTextMm, tablePieces, together } from '#drafting/pieces.ts'
import type { Scene } from '#drafting/scene.ts'
import { type SheetFrame, sheetPages, sheetRoomMm } from '#drafting/sheet-pages.ts'

export type SheetTable = { readonly heads: readonly string[]; readonly rows: readonly (readonly string[])[] }

/** One step as it stands on the sheet; what is empty is left out. `done`: by whom and when, empty to be written in. */
export type SheetStep = {
  readonly heading: string
  readonly where: string
  readonly picture: Scene
  readonly lines: readonly string[]
  /** Worked out for it: speeds, heats, passes. */
  readonly computed: readonly string[]
  readonly sizes: SheetTable
  readonly readings: BlankTable
  readonly cautions: readonly string[]
  readonly done: readonly Named[]
}

/** Everything a route sheet says, worded; plain data. */
export type RouteSheetData = SheetFrame & { readonly facts: readonly Named[]; readonly findings: Block; readonly cautionsHeading: string; readonly steps: readonly SheetStep[] }

const pictureMm = 64

/** A step after the other with its drawing, tables, blanks and cautions; black only, as many sheets as it takes. */
export function routeSheetPages(data: RouteSheetData, paper: Paper): readonly Scene[] {
  const roomMm = sheetRoomMm(paper)
  return sheetPages(data, [
    spaced(namedPiece(data.facts, roomMm, 2), 1),
    ...(data.findings.lines.length > 0 ? blockPieces(data.findings, roomMm, sheetTextMm) : []),
    ...data.steps.flatMap((step) => stepPieces(step, data.cautionsHeading, roomMm)),
  ], paper)
}

function stepPieces(step: SheetStep, cautionsHeading: string, roomMm: number): readonly Laid[] {
  const textMm = roomMm - pictureMm, { lines, computed, sizes, readings, cautions, done } = step
  const says = together([paragraph(step.where, textMm, sheetTextMm), ...lines.map((line) => spaced(paragraph(line, textMm, sheetTextMm), 0.8))])
  return [
    together([ruled(step.heading, roomMm), beside(drawingPiece(step.picture), says, pictureMm)]),
    ...computed.map((line) => spaced(paragraph(line, roomMm, sheetTextMm), 0.8)),
    ...(sizes.rows.length > 0 ? sizePieces(sizes, roomMm) : []),
    ...(readings.rows.length > 0 ? blankPieces(readings, roomMm).map((piece) => spaced(piece, 2)) : []),
    ...(cautions.length > 0 ? [together(blockPieces({ heading: cautionsHeading, lines: cautions }, roomMm, sheetTextMm))] : []),
    spaced(namedPiece(done, roomMm, done.length), 1.5),
  ]
}

/** A few sizes stand below each other; of many, three in a line. */
function sizePieces({ heads, rows }: SheetTable, roomMm: number): readonly Laid[] {
  const across = rows.length > fewSizes ? 3 : 1, lines = Array.from({ length: Math.ceil(rows.length / across) }, (_, at) => Array.from({ length: across }, (_none, k) => rows[at * across + k] ?? heads.map(() => '')).flat())
  const all = Array.from({ length: across }, () => heads).flat()
  return tablePieces(all, lines, all.map((_, column) => (across > 1 && column % heads.length === 0 ? 0.5 : 1)), roomMm).map((piece, at) => (at === 0 ? spaced(piece, 1.5) : piece))
}

const fewSizes = 6

function ruled(heading: string, roomMm: number): Laid {
  return { heightMm: 10, draw: (x, y) => [lineOf([x, y + 2.5], [x + roomMm, y + 2.5], 'outline'), textOf([x, y + 6.4], heading, { sizeMm: 4.8, bold: true })] }
}
