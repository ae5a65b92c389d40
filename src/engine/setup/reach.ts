import type { Cut, Hole, MilledCut } from '#model/cut.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/**
 * Length of a tool's tip in mm: how much further the point is than the full diameter.
 *
 * Drill: the cone of its point, 0 at 180°. Tap: its lead. Reamer: 2 mm of bevel. Spot and countersink: 0, their depth
 * is given to the deepest point.
 *
 * @source GEOMETRY TAP-LEADS SETUP-RULES
 */
export function tipLengthMm(hole: Pick<Hole, 'tool' | 'diameterMm' | 'pointAngleDeg' | 'pitchMm' | 'leadThreads'>): number {
  switch (hole.tool) {
    case 'drill':
      return hole.pointAngleDeg === 180 ? 0 : hole.diameterMm / 2 / Math.tan((hole.pointAngleDeg * Math.PI) / 360)
    case 'tap':
      return hole.leadThreads * (hole.pitchMm ?? 0)
    case 'ream':
      return 2
    case 'spot':
    case 'countersink':
      return 0
  }
}

export const isMilled = (cut: Cut): cut is MilledCut => cut.kind !== 'hole' && cut.kind !== 'end'

/** A milled cut that comes out below; a floor thinner than the run-through counts as cut away. */
export const isThroughCut = (cut: MilledCut, heightMm: number): boolean => cut.depthMm + cut.runThroughMm > heightMm + touchMm

/** How far below the part's underside a cut reaches, in mm; null for one that does not come out there. */
export function reachBelowMm(cut: Cut, heightMm: number): number | null {
  if (cut.kind === 'end') return null
  if (cut.kind === 'hole') return cut.through ? tipLengthMm(cut) + cut.runThroughMm : null
  return isThroughCut(cut, heightMm) ? cut.runThroughMm : null
}

/** The furthest any of the cuts reaches below the part's underside, in mm; null where none comes out. */
export function furthestBelowMm(cuts: readonly Cut[], heightMm: number): number | null {
  return greatest(cuts.map((cut) => reachBelowMm(cut, heightMm)))
}

/** Depth below the raw top of the deepest milled cut that passes over a jaw; null without one. */
export function deepestOverJawMm(cuts: readonly Cut[]): number | null {
  return greatest(cuts.map((cut) => (isMilled(cut) && cut.overJaw ? cut.depthMm : null)))
}

function greatest(values: readonly (number | null)[]): number | null {
  return values.reduce((most, value) => (value === null || (most !== null && most >= value) ? most : value), null)
}
