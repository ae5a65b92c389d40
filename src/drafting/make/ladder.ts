import { boxOf, lineOf, textOf } from '#drafting/items.ts'
import { standingApart } from '#drafting/apart.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import type { Item, Scene } from '#drafting/scene.ts'

/** `jaw`: how high the jaw is that the bars are to stay under, and what that line is called; null: none. */
export type LadderData = {
  readonly title: string
  readonly description: string
  readonly bars: readonly { readonly label: string; readonly heightMm: number; readonly thicknessMm: number }[]
  readonly jaw: { readonly heightMm: number; readonly label: string } | null
}

const edgeMm = 4, underMm = 7, overMm = 6, apartMm = 2.5, mostUpMm = 44, leastThickMm = 1.2

/** The heights ordered, one bar of each on edge from its end, rising, to one scale; heights are lettered where there is room. */
export function ladderDrawing({ title, description, bars, jaw }: LadderData, widthMm: number): Scene {
  const topMm = Math.max(jaw?.heightMm ?? 0, ...bars.map(({ heightMm }) => heightMm)), thickMm = bars.reduce((sum, one) => sum + one.thicknessMm, 0), free = widthMm - 2 * edgeMm - (bars.length - 1) * apartMm
  const scale = Math.min(mostUpMm / topMm, free / thickMm, 2), floor = edgeMm + overMm + topMm * scale
  let x = edgeMm
  const placed = bars.map((bar) => {
    const left = x, width = Math.max(leastThickMm, bar.thicknessMm * scale)
    x += width + apartMm
    return { ...bar, left, width }
  })
  const apart = standingApart(placed.map(({ label, left, width }) => ({ preferMm: left + width / 2, sizeMm: textWidthMm(label, 3.6) + 1.5 }))), right = Math.max(widthMm - edgeMm, x)
  return {
    title, description, widthMm, heightMm: floor + underMm, fields: [],
    items: [
      ...placed.flatMap(({ heightMm, left, width, label }, at): readonly Item[] => [
        boxOf([left, floor - heightMm * scale], [left + width, floor], 'bar', 'bar'),
        ...(apart.has(at) ? [textOf([left + width / 2, floor + 4], label, { anchor: 'middle' })] : []),
      ]),
      lineOf([edgeMm - 2, floor], [right, floor], 'outline'),
      ...(jaw === null ? [] : [lineOf([edgeMm - 2, floor - jaw.heightMm * scale], [right, floor - jaw.heightMm * scale], 'hidden'), textOf([right, floor - jaw.heightMm * scale - 3], jaw.label, { anchor: 'end', tone: 'thin' })]),
    ],
  }
}
