import type { Paper } from '#drafting/paper.ts'
import { type Block, blockPieces, type Laid, spaced } from '#drafting/paragraph.ts'
import { sheetTextMm, tablePieces } from '#drafting/pieces.ts'
import type { Scene } from '#drafting/scene.ts'
import { sheetPages, sheetRoomMm } from '#drafting/sheet-pages.ts'
import type { TitleCell } from '#drafting/title-rows.ts'

/** What every sheet beside the setup says, worded; plain data, so that what was told can be kept. */
export type BesideSheet = {
  readonly title: string
  readonly description: string
  readonly heading: string
  readonly under: string
  readonly heads: readonly string[]
  readonly rows: readonly (readonly string[])[]
  readonly blocks: readonly Block[]
  readonly code: TitleCell
  readonly foot: { readonly shop: TitleCell; readonly part: TitleCell; readonly operation: TitleCell; readonly date: TitleCell; readonly initials: TitleCell }
}

/** The drawing and what belongs to it, a line for each vise or bar, what to mind. */
export function besideSheetPages({ title, description, heading, under, heads, rows, blocks, code, foot }: BesideSheet, drawn: readonly Laid[], paper: Paper): readonly Scene[] {
  const widthMm = sheetRoomMm(paper), shares = heads.map((_, column) => (column < 2 ? 1.5 : 1))
  return sheetPages({
    title, description, heading, under, code,
    foot: [[{ ...foot.shop, share: 0.21 }, { ...foot.part, share: 0.27 }, { ...foot.operation, share: 0.24 }, { ...foot.date, share: 0.17 }, { ...foot.initials, share: 0.11 }]],
  }, [
    ...drawn,
    ...tablePieces(heads, rows, shares, widthMm).map((piece, at) => (at === 0 ? spaced(piece, 3) : piece)),
    ...blocks.flatMap((block) => blockPieces(block, widthMm, sheetTextMm)),
  ], paper)
}
