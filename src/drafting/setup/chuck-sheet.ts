import type { Paper } from '#drafting/paper.ts'
import { spaced } from '#drafting/paragraph.ts'
import { type Named, namedPiece } from '#drafting/pieces.ts'
import type { Scene } from '#drafting/scene.ts'
import { type BesideSheet, besideSheetPages } from '#drafting/setup/beside-sheet.ts'
import { chuckPicture, type ChuckPictureData } from '#drafting/setup/chuck-picture.ts'
import { onOnePage, scaledPiece } from '#drafting/setup/scaled-piece.ts'
import { sheetRoomMm } from '#drafting/sheet-pages.ts'

/** The sheet of a part blocked in on a magnetic chuck. */
export type ChuckSheetData = BesideSheet & {
  readonly picture: ChuckPictureData
  /** What the scale is called: `Scale`. */
  readonly scale: string
  readonly numbers: readonly Named[]
}

/** One sheet that goes to the machine: the part and the bars around it, drawn to a named scale, in the order in which its sides are covered. */
export function chuckSheetPages(data: ChuckSheetData, paper: Paper): readonly Scene[] {
  const widthMm = sheetRoomMm(paper)
  return onOnePage((heightMm) => besideSheetPages(data, [
    ...scaledPiece(chuckPicture(data.picture, { widthMm, heightMm, scales: 'standard' }), data.scale),
    spaced(namedPiece(data.numbers, widthMm, 2), 2),
  ], paper))
}
