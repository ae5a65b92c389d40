import type { Paper } from '#drafting/paper.ts'
import { type Block, blockPieces, paragraph, spaced } from '#drafting/paragraph.ts'
import { drawingPiece, sheetTextMm, tablePieces, together } from '#drafting/pieces.ts'
import type { SheetTable } from '#drafting/make/route-sheet.ts'
import type { Scene } from '#drafting/scene.ts'
import { type SheetFrame, sheetPages, sheetRoomMm } from '#drafting/sheet-pages.ts'

/** One stock with what is cut out of it. `picture` is drawn for the room of the sheet; null: nothing found. */
export type CutSheetPart = { readonly heading: string; readonly lines: readonly string[]; readonly picture: ((widthMm: number) => Scene) | null; readonly table: SheetTable }
export type CutSheetData = SheetFrame & { readonly parts: readonly CutSheetPart[]; readonly notes: Block }

/** The cut list to hang by the saw. */
export function cutListPages({ parts, notes, ...frame }: CutSheetData, paper: Paper): readonly Scene[] {
  const roomMm = sheetRoomMm(paper)
  return sheetPages(frame, [
    ...parts.flatMap(({ heading, lines, picture, table }) => [
      together([spaced(paragraph(heading, roomMm, 4.6, { bold: true }), 3), ...lines.map((line) => paragraph(line, roomMm, sheetTextMm)), ...(picture ? [spaced(drawingPiece(picture(roomMm)), 1.5)] : [])]),
      ...(table.rows.length > 0 ? tablePieces(table.heads, table.rows, table.heads.map(() => 1), roomMm) : []),
    ]),
    ...(notes.lines.length > 0 ? blockPieces(notes, roomMm, sheetTextMm) : []),
  ], paper)
}

export type BuyingData = SheetFrame & { readonly tables: readonly { readonly heading: string; readonly table: SheetTable; readonly shares: readonly number[] }[]; readonly notes: Block }

/** What has to be there before the work begins. */
export function buyingPages({ tables, notes, ...frame }: BuyingData, paper: Paper): readonly Scene[] {
  const roomMm = sheetRoomMm(paper)
  return sheetPages(frame, [
    ...tables.flatMap(({ heading, table, shares }) => [spaced(paragraph(heading, roomMm, 4.6, { bold: true }), 3), ...tablePieces(table.heads, table.rows, shares, roomMm)]),
    ...(notes.lines.length > 0 ? blockPieces(notes, roomMm, sheetTextMm) : []),
  ], paper)
}
