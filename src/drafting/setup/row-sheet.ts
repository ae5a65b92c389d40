import type { Paper } from '#drafting/paper.ts'
import { type Block, blockPieces, spaced } from '#drafting/paragraph.ts'
import { drawingPiece, sheetTextMm, tablePieces } from '#drafting/pieces.ts'
import type { Scene } from '#drafting/scene.ts'
import { rowPicture, type RowPictureVise } from '#drafting/setup/row-picture.ts'
import { sheetPages, sheetRoomMm } from '#drafting/sheet-pages.ts'
import type { TitleCell } from '#drafting/title-rows.ts'

/** Everything the sheet of a row says, worded; plain data, so that what was told can be kept. */
export type RowSheetData = {
  readonly title: string
  readonly description: string
  readonly heading: string
  readonly under: string
  readonly vises: readonly RowPictureVise[]
  /** Before the figure of how many times larger heights are drawn. */
  readonly drawnLarger: string
  readonly heads: readonly string[]
  readonly rows: readonly (readonly string[])[]
  readonly blocks: readonly Block[]
  readonly code: TitleCell
  readonly foot: { readonly shop: TitleCell; readonly part: TitleCell; readonly operation: TitleCell; readonly date: TitleCell; readonly initials: TitleCell }
}

/** One sheet that hangs at the row: the picture, a line for each vise, what to mind. */
export function rowSheetPages(data: RowSheetData, paper: Paper): readonly Scene[] {
  const widthMm = sheetRoomMm(paper), { foot } = data
  const picture = rowPicture({ title: data.title, description: data.description, vises: data.vises, drawnLarger: (times) => `${data.drawnLarger} ${times}` }, widthMm)
  const shares = data.heads.map((_, column) => (column < 2 ? 1.5 : 1))
  return sheetPages({
    title: data.title, description: data.description, heading: data.heading, under: data.under, code: data.code,
    foot: [[{ ...foot.shop, share: 0.22 }, { ...foot.part, share: 0.28 }, { ...foot.operation, share: 0.2 }, { ...foot.date, share: 0.17 }, { ...foot.initials, share: 0.13 }]],
  }, [
    drawingPiece(picture),
    ...tablePieces(data.heads, data.rows, shares, widthMm).map((piece, at) => (at === 0 ? spaced(piece, 3) : piece)),
    ...data.blocks.flatMap((block) => blockPieces(block, widthMm, sheetTextMm)),
  ], paper)
}
