import type { Hole } from '#model/cut.ts'
import { boxOf, lineOf, pathOf, shapeOf } from '#drafting/items.ts'
import type { Item, Point } from '#drafting/scene.ts'
import { clipped } from '#drafting/setup/clip.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import { holeDepths, holeEdges } from '#drafting/setup/hole-shape.ts'
import { partSection } from '#drafting/setup/part-section.ts'
import type { Shown, ShownBar } from '#drafting/setup/shown.ts'

/**
 * The cross-section from the part's left end, fixed jaw on the left: vise hatched, bars, part, what is milled off, the level
 * of the cutter over the jaws, holes with their tips. No dimensions and no lettering.
 */
export function sectionItems(shown: Shown, frame: Frame): readonly Item[] {
  return [
    ...vise(shown, frame),
    ...shown.bars.flatMap((bar) => barSection(bar, frame)),
    ...partSection(shown, frame),
    ...cutterLevel(shown, frame),
    ...holesApart(shown.holes).flatMap((hole) => holeSection(hole, shown, frame)),
  ]
}

/** Fixed jaw and bed are one body, the moving jaw another, hatched the other way. The bed runs on to the right. */
function vise({ picture, betweenMm, lowestMm }: Shown, { inSection, jawMm, scale, bedMm, bedPastMm }: Frame): readonly Item[] {
  const [x0, bedY] = inSection(0, 0), [x1] = inSection(betweenMm, 0), endX = x1 + jawMm + bedPastMm
  const underY = inSection(0, lowestMm)[1] + bedMm, topY = inSection(0, picture.fixedJawHeightMm)[1]
  const body: readonly Point[] = [[x0 - jawMm, underY], [x0 - jawMm, topY], [x0, topY], [x0, bedY], [endX, bedY], [endX, underY]]
  const midY = (bedY + underY) / 2
  return [
    shapeOf(body, 'none', 'cut-face'),
    pathOf([body[5]!, ...body.slice(0, 5)], 'outline'),
    pathOf([[endX, bedY - 1.2], [endX, midY - 1.2], [endX + 1.2, midY - 0.4], [endX - 1.2, midY + 0.4], [endX, midY + 1.2], [endX, underY + 1.2]], 'thin'),
    boxOf([x1, bedY - picture.movingJawHeightMm * scale], [x1 + jawMm, bedY], 'outline', 'cut-face-back'),
  ]
}

function barSection(bar: ShownBar, { inSection }: Frame): readonly Item[] {
  const low = inSection(bar.place.yMm, bar.fromMm), high = inSection(bar.place.yMm + bar.acrossMm, bar.fromMm + bar.upMm)
  return [boxOf(low, high, bar.fouled ? 'danger' : 'bar', bar.fouled ? 'danger' : 'bar')]
}

/** Red dashes over both jaws at the deepest cut that passes over them; what of a jaw stands above it is in danger. */
function cutterLevel({ picture, seatMm, heightMm, overJawMm, betweenMm }: Shown, { inSection, jawMm }: Frame): readonly Item[] {
  if (overJawMm === null) return []
  const levelMm = seatMm + heightMm - overJawMm
  const [x0, y] = inSection(0, levelMm), [x1] = inSection(betweenMm, levelMm)
  const jaws = [[x0 - jawMm, x0, picture.fixedJawHeightMm], [x1, x1 + jawMm, picture.movingJawHeightMm]] as const
  return [
    ...jaws.filter(([, , jawHeightMm]) => jawHeightMm > levelMm + 1e-6)
      .map(([from, to, jawHeightMm]) => boxOf([from, inSection(0, jawHeightMm)[1]], [to, Math.min(y, inSection(0, 0)[1])], 'danger', 'danger')),
    lineOf([x0 - jawMm, y], [x0, y], 'removal'),
    lineOf([x1, y], [x1 + jawMm, y], 'removal'),
  ]
}

/** Hidden edges from the milled top to the tip, the centre line, and in danger what goes into the bed. */
function holeSection(hole: Hole, { seatMm, heightMm, faceMm }: Shown, { inSection }: Frame): readonly Item[] {
  const at = ([y, z]: Point): Point => inSection(hole.yMm + y, seatMm + z)
  const edges = holeEdges(hole, heightMm, heightMm - faceMm)
  const outline = edges[0]
  if (!outline) return []
  const inBed = clipped(outline, -seatMm, 'below')
  const top = at([0, heightMm]), tip = at([0, holeDepths(hole, heightMm).tipMm])
  return [
    ...(inBed.length > 0 ? [shapeOf(inBed.map(at), 'danger', 'danger')] : []),
    ...edges.map((edge) => pathOf(edge.map(at), 'hidden')),
    lineOf([top[0], top[1] - 4], [tip[0], tip[1] + 3], 'centre'),
  ]
}

/** Holes that look alike from the end are drawn once. */
function holesApart(holes: readonly Hole[]): readonly Hole[] {
  const looks = ({ yMm, diameterMm, tool, through, depthMm, runThroughMm, pointAngleDeg, pitchMm, leadThreads }: Hole) =>
    JSON.stringify([yMm, diameterMm, tool, through, depthMm, runThroughMm, pointAngleDeg, pitchMm, leadThreads])
  return [...new Map(holes.map((hole) => [looks(hole), hole])).values()]
}
