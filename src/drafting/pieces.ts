import { lineOf, moved, textOf } from '#drafting/items.ts'
import { textWidthMm, wrapped } from '#drafting/lettering.ts'
import type { Laid } from '#drafting/paragraph.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** A name and what it is. */
export type Named = { readonly label: string; readonly value: string }

/** Lettering of sheets that are read in the hand. */
export const sheetTextMm = 3.6
const lineMm = 4.7

/** Pieces one under the other that stay on one sheet. */
export function together(pieces: readonly Laid[]): Laid {
  const heightMm = pieces.reduce((sum, piece) => sum + piece.heightMm, 0)
  return {
    heightMm,
    draw: (x, y) => {
      let at = y
      return pieces.flatMap((piece) => { at += piece.heightMm; return piece.draw(x, at - piece.heightMm) })
    },
  }
}

/** Two pieces side by side, the second `awayMm` to the right. */
export const beside = (left: Laid, right: Laid, awayMm: number): Laid =>
  ({ heightMm: Math.max(left.heightMm, right.heightMm), draw: (x, y) => [...left.draw(x, y), ...right.draw(x + awayMm, y)] })

/** A drawing as a piece. */
export const drawingPiece = (scene: Pick<Scene, 'heightMm' | 'items'>): Laid => ({ heightMm: scene.heightMm, draw: (x, y) => scene.items.map((item) => moved(item, x, y)) })

/** Names with their values in as many columns as asked for, line after line; a long value is broken, never cut, an empty one a line to write on. */
export function namedPiece(all: readonly Named[], widthMm: number, columns: number): Laid {
  const gapMm = 5, eachMm = (widthMm - (columns - 1) * gapMm) / columns
  const labelsMm = Array.from({ length: columns }, (_, column) =>
    Math.min(eachMm * 0.5, Math.max(0, ...all.filter((__, i) => i % columns === column).map(({ label }) => textWidthMm(label, sheetTextMm))) + 2.5))
  const cells = all.map(({ label, value }, index) => {
    const labelMm = labelsMm[index % columns]!
    return { label: wrapped(label, labelMm, sheetTextMm), labelMm, value: wrapped(value === '' ? ' ' : value, eachMm - labelMm, sheetTextMm, true), empty: value === '' }
  })
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, i) => cells.slice(i * columns, (i + 1) * columns))
  const heights = rows.map((row) => Math.max(...row.map((cell) => Math.max(cell.label.length, cell.value.length, cell.empty ? 1.6 : 0))) * lineMm + 0.8)
  return {
    heightMm: heights.reduce((sum, mm) => sum + mm, 0),
    draw: (x, y) => {
      let top = y
      return rows.flatMap((row, index) => {
        top += heights[index]!
        const from = top - heights[index]!
        return row.flatMap((cell, column): readonly Item[] => {
          const left = x + column * (eachMm + gapMm), line = (i: number): number => from + (i + 0.5) * lineMm + (cell.empty ? 0.6 * lineMm : 0)
          return [
            ...cell.label.map((text, i) => textOf([left, line(i)], text, { sizeMm: sheetTextMm })),
            ...(cell.empty ? [lineOf([left + cell.labelMm, top - 0.9], [left + eachMm, top - 0.9], 'thin')] : cell.value.map((text, i) => textOf([left + cell.labelMm, line(i)], text, { sizeMm: sheetTextMm, bold: true }))),
          ]
        })
      })
    },
  }
}

/** Rows of a table as pieces of their own, the heads with the first, so that a long one goes on on the next sheet. */
export const tablePieces = (heads: readonly string[], rows: readonly (readonly string[])[], shares: readonly number[], widthMm: number): readonly Laid[] =>
  (rows.length === 0 ? [tablePiece(heads, [], shares, widthMm, false)] : rows.map((row, i) => tablePiece(i === 0 ? heads : null, [row], shares, widthMm, false)))

/** A table with a line under its heads; the first column to the left, the others as `right` says. Cells are broken, never cut. */
export function tablePiece(heads: readonly string[] | null, rows: readonly (readonly string[])[], shares: readonly number[], widthMm: number, right: boolean): Laid {
  const whole = shares.reduce((sum, share) => sum + share, 0), widths = shares.map((share) => (share / whole) * widthMm)
  const lefts = widths.map((_, i) => widths.slice(0, i).reduce((sum, mm) => sum + mm, 0))
  const headed = heads === null ? 0 : 1, lines = [...(heads === null ? [] : [heads]), ...rows].map((row, index) => row.map((text, i) => wrapped(text, widths[i]! - 2, sheetTextMm, index < headed)))
  const heights = lines.map((row) => Math.max(1, ...row.map((cell) => cell.length)) * lineMm + 0.9)
  return {
    heightMm: heights.reduce((sum, mm) => sum + mm, 0),
    draw: (x, y) => {
      let top = y
      return lines.flatMap((row, index): readonly Item[] => {
        const from = top
        top += heights[index]!
        return [
          ...row.flatMap((cell, column) => cell.map((text, i) => {
            const end = right && column > 0
            return textOf([x + lefts[column]! + (end ? widths[column]! - 2 : 0), from + (i + 0.5) * lineMm], text, { sizeMm: sheetTextMm, bold: index < headed, anchor: end ? 'end' : 'start' })
          })),
          lineOf([x, top - 0.3], [x + widthMm, top - 0.3], index < headed ? 'outline' : 'thin'),
        ]
      })
    },
  }
}
