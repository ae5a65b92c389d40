import type { Units } from '#model/shop-record.ts'
import { type BarCardData, barDrawing } from '#drafting/rack/bar-card.ts'
import { heightOverYears, type HeightOverYears } from '#drafting/rack/height-over-years.ts'
import type { Paper } from '#drafting/paper.ts'
import { type Block, blockPieces, spaced } from '#drafting/paragraph.ts'
import { beside, drawingPiece, type Named, namedPiece, sheetTextMm, tablePieces, together } from '#drafting/pieces.ts'
import type { Scene } from '#drafting/scene.ts'
import { type SheetFrame, sheetPages, sheetRoomMm } from '#drafting/sheet-pages.ts'

/** The history of one bar, worded. */
export type LineOfLifeData = SheetFrame & {
  readonly units: Units
  readonly bar: Omit<BarCardData, 'title' | 'description'>
  /** Standing of its height, proved for, trust, mates, slot … */
  readonly figures: readonly Named[]
  /** Null below two heights. */
  readonly years: Omit<HeightOverYears, 'title' | 'description'> | null
  /** What the heights say about wear or growth; empty: nothing. */
  readonly wear: Block | null
  readonly heads: readonly [day: string, what: string, who: string]
  /** Latest first. */
  readonly rows: readonly (readonly [day: string, what: string, who: string])[]
}

const barMm = 96
const gapMm = 5
const yearsMm = 62

/** The bar, its height over the years and all that happened to it; one page, further ones where the history is long. */
export function lineOfLifePages(data: LineOfLifeData, paper: Paper): readonly Scene[] {
  const roomMm = sheetRoomMm(paper), bar = barDrawing({ ...data.bar, title: '', description: '' }, { widthMm: barMm, heightMm: 60, units: data.units })
  const years = data.years && heightOverYears({ ...data.years, title: '', description: '' }, { widthMm: roomMm, heightMm: yearsMm, units: data.units })
  return sheetPages(data, [
    spaced(beside(drawingPiece(bar), spaced(namedPiece(data.figures, roomMm - barMm - gapMm, 1), 3), barMm + gapMm), 2),
    ...(years ? [spaced(drawingPiece(years), 3)] : []),
    ...(data.wear ? [together(blockPieces(data.wear, roomMm, sheetTextMm))] : []),
    ...tablePieces(data.heads, data.rows, [0.16, 0.7, 0.14], roomMm).map((piece, index) => (index === 0 ? spaced(piece, 4) : piece)),
  ], paper)
}
