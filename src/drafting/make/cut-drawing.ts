import { boxOf, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** One piece out of a strip or stock length; `label` what it becomes. `upMm`: its size across the strip, on plates. */
export type CutPiece = { readonly label: string; readonly lengthMm: number; readonly upMm?: number }

/** A stock length with its pieces from the left, a cut after each; `times`: as often cut so. */
export type CutLine = { readonly label: string; readonly stockMm: number; readonly pieces: readonly CutPiece[] }

export type CutBarsData = { readonly title: string; readonly description: string; readonly kerfMm: number; readonly lines: readonly CutLine[] }

const edgeMm = 2, textMm = 3.4, barUpMm = 7, lineMm = 14

/** Stock lengths one under the other to one scale, pieces outlined, what is left hatched. */
export function cutBarsDrawing({ title, description, kerfMm, lines }: CutBarsData, widthMm: number): Scene {
  const scale = (widthMm - 2 * edgeMm) / Math.max(1, ...lines.map(({ stockMm }) => stockMm))
  return {
    title, description, widthMm, heightMm: edgeMm + lines.length * lineMm, fields: [],
    items: lines.flatMap(({ label, stockMm, pieces }, row): readonly Item[] => {
      const top = edgeMm + row * lineMm + 4.6, bottom = top + barUpMm
      let x = 0
      return [
        textOf([edgeMm, top - 2.6], shortened(label, widthMm - 2 * edgeMm, textMm), { sizeMm: textMm }),
        boxOf([edgeMm, top], [edgeMm + stockMm * scale, bottom], 'thin', 'cut-face'),
        ...pieces.flatMap((piece): readonly Item[] => {
          const left = edgeMm + x * scale, right = left + piece.lengthMm * scale
          x += piece.lengthMm + kerfMm
          return [boxOf([left, top], [right, bottom], 'bar', 'sheet'), boxOf([left, top], [right, bottom], 'bar', 'bar'), ...said(piece.label, left, right, (top + bottom) / 2)]
        }),
      ]
    }),
  }
}

/** A plate cut into strips across its width, from the top down; pieces side by side in each. */
export type CutPlateData = {
  readonly title: string
  readonly description: string
  readonly kerfMm: number
  readonly widthMm: number
  readonly lengthMm: number
  readonly strips: readonly { readonly heightMm: number; readonly pieces: readonly CutPiece[] }[]
}

/** Offcuts are not drawn larger than half their size, so that plates beside each other can be told apart. */
const mostPlateUpMm = 150, mostPlateScale = 0.5

/** The plate to scale, what is left hatched; a plate that is not cut to its end is broken off below the last strip. */
export function cutPlateDrawing({ title, description, kerfMm, widthMm: plateMm, lengthMm, strips }: CutPlateData, widthMm: number): Scene {
  const usedMm = strips.reduce((sum, { heightMm }) => sum + heightMm + kerfMm, 0), shownMm = Math.min(lengthMm, Math.max(usedMm + 40, usedMm * 1.08)), broken = shownMm < lengthMm
  const scale = Math.min((widthMm - 2 * edgeMm) / plateMm, mostPlateUpMm / shownMm, mostPlateScale), left = edgeMm, top = edgeMm, right = left + plateMm * scale, bottom = top + shownMm * scale
  let y = top
  return {
    title, description, widthMm, heightMm: bottom + edgeMm + (broken ? 3 : 0), fields: [],
    items: [
      boxOf([left, top], [right, bottom], broken ? 'thin' : 'outline', 'cut-face'),
      ...strips.flatMap(({ heightMm, pieces }): readonly Item[] => {
        const stripTop = y
        let x = left
        y += (heightMm + kerfMm) * scale
        return pieces.flatMap((piece): readonly Item[] => {
          const from = x, to = x + piece.lengthMm * scale, under = stripTop + (piece.upMm ?? heightMm) * scale
          x = to + kerfMm * scale
          return [boxOf([from, stripTop], [to, under], 'bar', 'sheet'), boxOf([from, stripTop], [to, under], 'bar', 'bar'), ...said(piece.label, from, to, (stripTop + under) / 2, under - stripTop)]
        })
      }),
    ],
  }
}

/** In the middle of a piece, as large as it takes, left out where it would not be legible. */
function said(label: string, left: number, right: number, y: number, upMm = barUpMm): readonly Item[] {
  const sizeMm = Math.min(textMm, upMm * 0.75)
  return sizeMm >= 1.8 && textWidthMm(label, sizeMm) < right - left - 0.6 ? [textOf([(left + right) / 2, y], label, { anchor: 'middle', sizeMm, tone: 'bar' })] : []
}
