import { touchMm } from '#engine/setup/tolerance.ts'

/** In the plan, mm. */
export type Point = readonly [xMm: number, yMm: number]

/** The outline around points, counter-clockwise, without points on its straight sides; fewer than three where they lie on one line. */
export function hullOf(points: readonly Point[]): readonly Point[] {
  const sorted = points.toSorted(([x, y], [u, v]) => x - u || y - v).filter((point, k, all) => k === 0 || point[0] !== all[k - 1]![0] || point[1] !== all[k - 1]![1])
  return sorted.length < 3 ? sorted : [...chain(sorted), ...chain(sorted.toReversed())]
}

/** Whether a point lies inside an outline or on it. */
export function isInside(hull: readonly Point[], point: Point): boolean {
  const sides = hull.map((from, k) => [from, hull[(k + 1) % hull.length]!] as const)
  if (hull.length > 2 && sides.every(([from, to]) => turn(from, to, point) >= 0)) return true
  return sides.some(([from, to]) => distanceMm(from, to, point) <= touchMm)
}

/** One side of the outline, less its last point. */
function chain(points: readonly Point[]): readonly Point[] {
  const kept: Point[] = []
  for (const point of points) {
    while (kept.length > 1 && turn(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop()
    kept.push(point)
  }
  return kept.slice(0, -1)
}

/** Positive where the way from a over b to c turns left. */
const turn = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax)

/** From a point to a straight piece. */
function distanceMm([ax, ay]: Point, [bx, by]: Point, [px, py]: Point): number {
  const [dx, dy] = [bx - ax, by - ay], square = dx * dx + dy * dy
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / square))
  return Math.hypot(ax + share * dx - px, ay + share * dy - py)
}
