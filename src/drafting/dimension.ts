import type { DimensionItem, Point } from '#drafting/scene.ts'

/** Length and half width of an arrowhead, and how far an outside arrow's line reaches. */
const head = { longMm: 2.2, halfMm: 0.65, stubMm: 4.5 }

/** The pieces of line of a dimension, gap left open, stubs of outside arrows and tail drawn on. */
export function dimensionLinesOf(item: DimensionItem): readonly (readonly Point[])[] {
  const { from, to, gap } = item, length = distance(from, to)
  const pieces: (readonly Point[])[] = gap === null || length === 0
    ? [[from, to]]
    : [[from, towards(from, to, Math.max(0, gap[0]))], [towards(from, to, Math.min(length, gap[1])), to]]
  if (item.arrows === 'outside') pieces.push([from, towards(from, to, -head.stubMm)], [to, towards(to, from, -head.stubMm)])
  if (item.tail) pieces.push([distance(item.tail, from) < distance(item.tail, to) ? from : to, item.tail])
  return pieces
}

/** Two open arrowheads with their points at the ends of the dimension. */
export function arrowheadsOf(item: DimensionItem): readonly (readonly Point[])[] {
  const back = item.arrows === 'inside' ? head.longMm : -head.longMm
  return [arrowhead(item.from, item.to, back), arrowhead(item.to, item.from, back)]
}

/** An open arrowhead at `at`, its barbs `backMm` towards `away`. */
export function arrowhead(at: Point, away: Point, backMm = head.longMm): readonly Point[] {
  const [x, y] = towards(at, away, backMm), length = distance(at, away) || 1
  const acrossX = (-(away[1] - at[1]) / length) * head.halfMm, acrossY = ((away[0] - at[0]) / length) * head.halfMm
  return [[x + acrossX, y + acrossY], at, [x - acrossX, y - acrossY]]
}

function towards(from: Point, to: Point, byMm: number): Point {
  const length = distance(from, to) || 1
  return [from[0] + ((to[0] - from[0]) / length) * byMm, from[1] + ((to[1] - from[1]) / length) * byMm]
}

const distance = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1])
