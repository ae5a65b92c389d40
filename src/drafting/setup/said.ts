import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { letteringMm, lineOf, textOf } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import type { FieldSpot, Item, Point } from '#drafting/scene.ts'

/** Box on the paper that says a size: a field laid over it, or lines of lettering. */
export type Said = { readonly name: string; readonly widthMm: number; readonly heightMm: number; readonly lines: readonly string[] }

/** A field takes 82 × 72 px of a screen of 96 to the inch: what a finger needs, whatever its lettering looks like. */
export const fieldBox = { widthMm: 21.7, heightMm: 19.05 }
/** What of a field's height can be seen, so that the lines end at it. */
export const fieldSeenMm = 16

const lineMm = 4.4
const figuresMm = 3.8

export function fieldFor(name: string): Said {
  return { name, ...fieldBox, lines: [] }
}

/** Lettering of one or more lines, the first in bold figures. */
export function lettered(name: string, lines: readonly string[]): Said {
  const widthMm = Math.max(...lines.map((line, index) => textWidthMm(line, index === 0 ? figuresMm : letteringMm, index === 0)))
  return { name, widthMm: widthMm + 1.6, heightMm: lines.length * lineMm + 0.8, lines }
}

/** A size in words, `?` while nobody has given it. */
export const sizeText = (mm: number | null, units: Units): string => (mm === null ? '?' : wordLength(mm, units))

export const isField = (said: Said): boolean => said.lines.length === 0

/** The lettering of a box with its middle at a point; a field draws nothing. */
export function lettering(said: Said, [x, y]: Point): readonly Item[] {
  const top = y - ((said.lines.length - 1) * lineMm) / 2
  return said.lines.map((line, index) =>
    textOf([x, top + index * lineMm], line, index === 0 ? { anchor: 'middle', bold: true, sizeMm: figuresMm } : { anchor: 'middle', tone: 'thin' }))
}

export function spotFor(said: Said, at: Point): readonly FieldSpot[] {
  return isField(said) ? [{ name: said.name, at, widthMm: said.widthMm, heightMm: said.heightMm }] : []
}

/** The height of a box at which lines end. */
export const seenMm = (said: Said): number => (isField(said) ? fieldSeenMm : said.heightMm)

const arrowsMm = 6.5

/** An upright size from `topMm` down to `bottomMm` at `xMm`, said by a box in the line, above or below it. */
export function upright(xMm: number, topMm: number, bottomMm: number, said: Said, at: Point): readonly Item[] {
  const half = seenMm(said) / 2, inLine = at[1] - half >= topMm && at[1] + half <= bottomMm
  const tail: Point | null = inLine ? null : at[1] + half <= topMm ? [xMm, at[1] + half] : at[1] - half >= bottomMm ? [xMm, at[1] - half] : null
  return [
    {
      kind: 'dimension', from: [xMm, topMm], to: [xMm, bottomMm], arrows: bottomMm - topMm < arrowsMm ? 'outside' : 'inside',
      gap: inLine ? [at[1] - half - topMm, at[1] + half - topMm] : null, tail, tone: 'thin',
    },
    ...lettering(said, at),
  ]
}

/** A level size from `leftMm` to `rightMm` at `yMm`, said by a box in the line or under it. */
export function level(yMm: number, leftMm: number, rightMm: number, said: Said, at: Point): readonly Item[] {
  const half = said.widthMm / 2, inLine = Math.abs(at[1] - yMm) < 1e-6
  return [
    {
      kind: 'dimension', from: [leftMm, yMm], to: [rightMm, yMm], arrows: rightMm - leftMm < arrowsMm ? 'outside' : 'inside',
      gap: inLine ? [at[0] - half - leftMm, at[0] + half - leftMm] : null, tail: null, tone: 'thin',
    },
    ...lettering(said, at),
  ]
}

export const extension = (from: Point, to: Point): Item => lineOf(from, to, 'thin')

/** Whether a box fits into a line between two arrows. */
export const fitsInLine = (spanMm: number, boxMm: number): boolean => spanMm >= boxMm + 5
