import type { Paper } from '#drafting/paper.ts'
import { spaced } from '#drafting/paragraph.ts'
import { type Named, namedPiece } from '#drafting/pieces.ts'
import type { Scene } from '#drafting/scene.ts'
import { type BesideSheet, besideSheetPages } from '#drafting/setup/beside-sheet.ts'
import { onOnePage, scaledPiece } from '#drafting/setup/scaled-piece.ts'
import { tablePicture, type TablePictureData } from '#drafting/setup/table-picture.ts'
import { sheetRoomMm } from '#drafting/sheet-pages.ts'

/** The sheet of a part on bars under straps. */
export type TableSheetData = BesideSheet & {
  readonly picture: TablePictureData
  /** What the scale is called: `Scale`. */
  readonly scale: string
  readonly numbers: readonly Named[]
}

/** One sheet that goes to the machine: the part on its bars, drawn to a named scale, and where each bar, hole and strap is. */
export function tableSheetPages(data: TableSheetData, paper: Paper): readonly Scene[] {
  const widthMm = sheetRoomMm(paper)
  return onOnePage((heightMm) => besideSheetPages(data, [
    ...scaledPiece(tablePicture(data.picture, { widthMm, heightMm, scales: 'standard' }), data.scale),
    spaced(namedPiece(data.numbers, widthMm, 2), 2),
  ], paper))
}
