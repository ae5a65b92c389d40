import type { Paper } from '#drafting/paper.ts'
import { type Block, blockPieces, spaced } from '#drafting/paragraph.ts'
import { beside, type Named, namedPiece, sheetTextMm, together } from '#drafting/pieces.ts'
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
  /** Where holes and straps are, beside the drawing. */
  readonly beside: readonly Block[]
}

const pictureShare = 0.58, gapMm = 4

/** One sheet that goes to the machine: the part on its bars, drawn to a named scale, and where each bar, hole and strap is. */
export function tableSheetPages(data: TableSheetData, paper: Paper): readonly Scene[] {
  const widthMm = sheetRoomMm(paper), pictureMm = widthMm * pictureShare, sideMm = widthMm - pictureMm - gapMm
  const side = together([namedPiece(data.numbers, sideMm, 1), ...data.beside.flatMap((block) => blockPieces(block, sideMm, sheetTextMm))])
  return onOnePage((heightMm) => besideSheetPages(data, [
    beside(together(scaledPiece(tablePicture(data.picture, { widthMm: pictureMm, heightMm, scales: 'standard' }), data.scale)), spaced(side, 4), pictureMm + gapMm),
  ], paper))
}
