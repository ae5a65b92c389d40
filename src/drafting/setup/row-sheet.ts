import type { Paper } from '#drafting/paper.ts'
import { drawingPiece } from '#drafting/pieces.ts'
import type { Scene } from '#drafting/scene.ts'
import { type BesideSheet, besideSheetPages } from '#drafting/setup/beside-sheet.ts'
import { rowPicture, type RowPictureVise } from '#drafting/setup/row-picture.ts'
import { sheetRoomMm } from '#drafting/sheet-pages.ts'

export type RowSheetData = BesideSheet & {
  readonly vises: readonly RowPictureVise[]
  /** Before the figure of how many times larger heights are drawn. */
  readonly drawnLarger: string
}

/** One sheet that hangs at the row: the picture, a line for each vise, what to mind. */
export function rowSheetPages(data: RowSheetData, paper: Paper): readonly Scene[] {
  const { title, description, vises, drawnLarger } = data
  return besideSheetPages(data, [drawingPiece(rowPicture({ title, description, vises, drawnLarger: (times) => `${drawnLarger} ${times}` }, sheetRoomMm(paper)))], paper)
}
