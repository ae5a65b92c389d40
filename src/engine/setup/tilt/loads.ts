import { areaAround, depthMm, leftOfMm } from '#engine/setup/seat/outline.ts'
import type { TiltQuestion } from '#engine/setup/tilt/tilt.ts'
import type { Point } from '#engine/setup/table/hull.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

export type Carried = 'carried' | 'on-edge' | 'tips' | 'collinear'

/** What is left of a load a hair aside, as a part of the size of what carries it. */
const hair = 1e-7

/** Whether the load stands inside what carries it, whatever the heights. */
export function carriedOf(question: TiltQuestion): Carried {
  const depth = loadDepthMm(question)
  return depth === null ? 'collinear' : depth < -touchMm ? 'tips' : depth <= touchMm ? 'on-edge' : 'carried'
}

/**
 * The load, or where it stands over a line through two points (jaw held: over a place along) one a hair to either side: there
 * the part rocks, and takes the one way to lie as often as the other.
 */
export function loadsFor(question: TiltQuestion): readonly Point[] {
  const { spots, part: { loadMm }, jawSlopeUmPerMm } = question, [x, y] = loadMm
  const over = jawSlopeUmPerMm !== null
    ? spots.some(({ xMm }) => Math.abs(xMm - x) <= touchMm)
    : spots.some((one, i) => spots.slice(i + 1).some((other) => isInLine([one.xMm, one.yMm], [other.xMm, other.yMm], loadMm)))
  if (!over) return [loadMm]
  const aside = Math.min(hair * Math.max(...spots.map(({ xMm, yMm }) => Math.abs(xMm - x) + Math.abs(yMm - y))), loadDepthMm(question)! / 4)
  // across at the golden part of along: no line of stations lies so
  return [1, -1].map((side) => [x + side * aside, y + side * 0.618_033_988_7 * aside] as const)
}

const isInLine = (one: Point, other: Point, load: Point): boolean =>
  (one[0] === other[0] && one[1] === other[1] ? Math.hypot(load[0] - one[0], load[1] - one[1]) : Math.abs(leftOfMm(one, other, load))) <= touchMm

/** How deep the load stands inside the points (jaw held: between their ends along); null where they span too little. */
function loadDepthMm({ spots, part: { loadMm }, jawSlopeUmPerMm }: TiltQuestion): number | null {
  if (jawSlopeUmPerMm === null) {
    const outline = areaAround(spots.map(({ xMm, yMm }) => [xMm, yMm] as const))
    return outline === null ? null : depthMm(outline, loadMm)
  }
  const xs = spots.map(({ xMm }) => xMm), from = Math.min(...xs), to = Math.max(...xs)
  return to - from <= touchMm ? null : Math.min(loadMm[0] - from, to - loadMm[0])
}
