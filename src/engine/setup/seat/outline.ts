import { type Point, hullOf } from '#engine/setup/table/hull.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** Positive to the left of the way from a to b, in mm from that line. */
export function leftOfMm([ax, ay]: Point, [bx, by]: Point, [px, py]: Point): number {
  const [dx, dy] = [bx - ax, by - ay]
  return (dx * (py - ay) - dy * (px - ax)) / Math.hypot(dx, dy)
}

/** The sides of an outline in turn, counter-clockwise. */
export function sidesOf(outline: readonly Point[]): readonly (readonly [Point, Point])[] {
  return outline.map((from, k) => [from, outline[(k + 1) % outline.length]!] as const)
}

/** How deep a point lies inside an outline: its distance to the nearest side, negative outside. The outline has an area. */
export const depthMm = (outline: readonly Point[], point: Point): number => Math.min(...sidesOf(outline).map(([from, to]) => leftOfMm(from, to, point)))

/** The outline around points; null where they lie on one line (within the touch), or on one spot. */
export function areaAround(points: readonly Point[]): readonly Point[] | null {
  const outline = hullOf(points)
  if (outline.length < 3) return null
  const [from, to] = longestOf(outline)
  return outline.some((point) => Math.abs(leftOfMm(from, to, point)) > touchMm) ? outline : null
}

/** The two of some points that are furthest apart, of an outline or of points in line. */
export function longestOf(points: readonly Point[]): readonly [Point, Point] {
  const [first] = points as [Point]
  const furthestFrom = ([x, y]: Point): Point => points.reduce((best, one) => (Math.hypot(one[0] - x, one[1] - y) > Math.hypot(best[0] - x, best[1] - y) ? one : best), first)
  const from = furthestFrom(first)
  return [from, furthestFrom(from)]
}
