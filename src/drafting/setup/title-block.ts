import type { Paper } from '#drafting/paper.ts'
import type { Item } from '#drafting/scene.ts'
import { type TitleCell, titleRows, titleRowsMm } from '#drafting/title-rows.ts'

/** The cells at the foot of a sheet; a value that is not known is an empty text, to be filled in by hand. */
export type TitleBlock = {
  readonly shop: TitleCell; readonly part: TitleCell; readonly operation: TitleCell; readonly code: TitleCell
  readonly vise: TitleCell; readonly jawSet: TitleCell; readonly pair: TitleCell; readonly slot: TitleCell; readonly date: TitleCell; readonly initials: TitleCell
}

/** Cells of each row with their share of its width. */
const rows: readonly (readonly (readonly [name: keyof TitleBlock, share: number])[])[] = [
  [['shop', 0.26], ['part', 0.3], ['operation', 0.24], ['code', 0.2]],
  [['vise', 0.2], ['jawSet', 0.2], ['pair', 0.16], ['slot', 0.1], ['date', 0.2], ['initials', 0.14]],
]
export const titleBlockMm = titleRowsMm(rows.length)

/** Two rows along the foot of the frame. */
export const titleBlock = (block: TitleBlock, paper: Paper): readonly Item[] =>
  titleRows(rows.map((cells) => cells.map(([name, share]) => ({ ...block[name], share }))), paper)
