import type { Hole } from '#model/cut.ts'
import type { Point } from '#drafting/scene.ts'

/** Heights above the part's underside where the full diameter ends and where the tip ends; negative below the part. */
export type HoleDepths = { readonly fullMm: number; readonly tipMm: number }

/** How deep a hole goes in a part of this height: a through hole to its run-through below the part, the tip beyond it. */
export function holeDepths(hole: Hole, heightMm: number): HoleDepths {
  const fullMm = hole.through || hole.depthMm === undefined ? -hole.runThroughMm : heightMm - hole.depthMm
  if (hole.tool === 'spot' || hole.tool === 'countersink') return { fullMm, tipMm: fullMm }
  return { fullMm, tipMm: fullMm - tipLengthMm(hole) }
}

/**
 * The edges of a hole from the side: y across from its centre line, z up from the part's underside.
 *
 * A drill ends in its point, a tap in its lead, a reamer square; a spot or countersink is a cone from the top.
 */
export function holeEdges(hole: Hole, heightMm: number, topMm: number): readonly (readonly Point[])[] {
  const r = hole.diameterMm / 2, { fullMm, tipMm } = holeDepths(hole, heightMm)
  if (fullMm >= topMm) return []
  if (hole.tool === 'spot' || hole.tool === 'countersink') return [[[-r, topMm], [0, fullMm], [r, topMm]]]
  const inner = hole.tool === 'drill' ? 0 : hole.tool === 'tap' ? r * 0.8 : r
  const outline: readonly Point[] = [[-r, topMm], [-r, fullMm], [-inner, tipMm], [inner, tipMm], [r, fullMm], [r, topMm]]
  return tipMm === fullMm ? [outline] : [outline, [[-r, fullMm], [r, fullMm]]]
}

function tipLengthMm(hole: Hole): number {
  switch (hole.tool) {
    case 'drill': return hole.pointAngleDeg >= 180 ? 0 : hole.diameterMm / 2 / Math.tan((hole.pointAngleDeg * Math.PI) / 360)
    case 'tap': return hole.leadThreads * (hole.pitchMm ?? 0)
    case 'ream': return 2
    case 'spot': case 'countersink': return 0
  }
}
