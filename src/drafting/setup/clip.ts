import type { Point } from '#drafting/scene.ts'

/**
 * The part of a convex shape on one side of a level line: `below` keeps the smaller second coordinate.
 *
 * Empty where nothing is left.
 */
export function clipped(points: readonly Point[], levelMm: number, keep: 'below' | 'above'): readonly Point[] {
  const inside = ([, v]: Point): boolean => (keep === 'below' ? v <= levelMm : v >= levelMm)
  const out: Point[] = []
  points.forEach((point, index) => {
    const before = points[(index + points.length - 1) % points.length]!
    if (inside(point) !== inside(before)) {
      const share = (levelMm - before[1]) / (point[1] - before[1])
      out.push([before[0] + share * (point[0] - before[0]), levelMm])
    }
    if (inside(point)) out.push(point)
  })
  return out.length < 3 ? [] : out
}

/** A circle as a many-sided shape, for what is cut off it. */
export function circlePoints([x, y]: Point, radiusMm: number): readonly Point[] {
  const sides = 72
  return Array.from({ length: sides }, (_, i): Point => {
    const turn = (i / sides) * 2 * Math.PI
    return [x + radiusMm * Math.sin(turn), y + radiusMm * Math.cos(turn)]
  })
}
