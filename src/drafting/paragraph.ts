import { textOf, type TextStyle } from '#drafting/items.ts'
import { wrapped } from '#drafting/lettering.ts'
import type { Item } from '#drafting/scene.ts'

/** A heading with lines under it, as worded outside; each line is broken to the width it gets. */
export type Block = { readonly heading: string; readonly lines: readonly string[] }

/** Items from the top of the paper down, and the height they take; `draw` puts them with their left upper corner at a point. */
export type Laid = { readonly heightMm: number; readonly draw: (xMm: number, yMm: number) => readonly Item[] }

/** From one line of lettering to the next, as a share of its size. */
const leading = 1.3

/** One text over as many lines as it needs. */
export function paragraph(text: string, widthMm: number, sizeMm: number, style: TextStyle = {}): Laid {
  const lines = wrapped(text, widthMm, sizeMm, style.bold)
  const stepMm = sizeMm * leading
  return {
    heightMm: lines.length * stepMm,
    draw: (x, y) => lines.map((line, index) => textOf([x, y + (index + 0.5) * stepMm], line, { ...style, sizeMm })),
  }
}

/** A heading and its lines, one piece for each, so that a block may go on on the next sheet. */
export function blockPieces({ heading, lines }: Block, widthMm: number, sizeMm: number): readonly Laid[] {
  const indentMm = lines.length > 1 ? sizeMm : 0
  return [
    spaced(paragraph(heading, widthMm, sizeMm, { bold: true }), sizeMm * 0.7),
    ...lines.map((line): Laid => {
      const laid = paragraph(line, widthMm - indentMm, sizeMm)
      return {
        heightMm: laid.heightMm + sizeMm * 0.25,
        draw: (x, y) => [...(indentMm > 0 ? [textOf([x, y + (sizeMm * leading) / 2], '·', { bold: true, sizeMm })] : []), ...laid.draw(x + indentMm, y)],
      }
    }),
  ]
}

/** The same with free paper above it. */
export const spaced = ({ heightMm, draw }: Laid, aboveMm: number): Laid => ({ heightMm: heightMm + aboveMm, draw: (x, y) => draw(x, y + aboveMm) })

/** Draws pieces one under the other as long as they end above `endMm`; `rest` is what did not. */
export function stacked(pieces: readonly Laid[], xMm: number, startMm: number, endMm: number): { readonly items: readonly Item[]; readonly endMm: number; readonly rest: readonly Laid[] } {
  const items: Item[] = []
  let y = startMm
  for (const [index, piece] of pieces.entries()) {
    if (y + piece.heightMm > endMm + 1e-6) return { items, endMm: y, rest: pieces.slice(index) }
    items.push(...piece.draw(xMm, y))
    y += piece.heightMm
  }
  return { items, endMm: y, rest: [] }
}

export const heightOf = (pieces: readonly Laid[]): number => pieces.reduce((sum, { heightMm }) => sum + heightMm, 0)
