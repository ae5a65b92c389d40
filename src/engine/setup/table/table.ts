import type { Cut } from '#model/cut.ts'
import type { Part } from '#model/part.ts'
import type { Wishes } from '#model/wishes.ts'
import { spareMm } from '#engine/setup/clearance.ts'
import { obstaclesOf } from '#engine/setup/obstacles.ts'
import { touchMm } from '#engine/setup/tolerance.ts'
import { limitsFromBelow } from '#engine/setup/window.ts'
import { hullOf, isInside, type Point } from '#engine/setup/table/hull.ts'

/** A bar where it was put, its corner with the smallest x and y; sizes as it stands. */
export type TableBar = { readonly xMm: number; readonly yMm: number; readonly alongMm: number; readonly acrossMm: number }

/** A part on bars on the machine's table, held by straps. x and y as in a vise: from the part's left end, and across it. */
export type TableQuestion = {
  readonly part: Part
  readonly cuts: readonly Cut[]
  readonly wishes: Wishes
  readonly bars: readonly TableBar[]
  readonly straps: readonly { readonly xMm: number; readonly yMm: number }[]
}

export type TableReason = 'drill-tip' | 'through-cut' | 'table'

/** `index` is that of the strap, or of the cut. */
export type TableFinding = { readonly code: 'strap-not-over-bar' | 'tips-under-thrust'; readonly index: number }

/** Seats that serve, up from the table: there is no high end. */
export type Table = {
  readonly lowMm: number
  readonly highMm: null
  readonly lowBecause: TableReason
  /** For each bar the cuts that lack air to it, rising. */
  readonly fouledHoles: readonly (readonly number[])[]
  readonly findings: readonly TableFinding[]
}

/**
 * A part on two to four bars under straps: how high it has to sit, which cuts meet which bar, straps that press on nothing,
 * and holes whose thrust tips the part because they lie outside what the bars carry.
 *
 * @source SETUP-RULES GEOMETRY
 */
export function tableOf(question: TableQuestion): Table {
  const limits = limitsFromBelow(question), lowMm = Math.max(0, limits['drill-tip'] ?? 0, limits['through-cut'] ?? 0)
  const sets = (reason: 'drill-tip' | 'through-cut') => (limits[reason] ?? -Infinity) >= lowMm - touchMm
  return {
    lowMm, highMm: null,
    lowBecause: sets('drill-tip') ? 'drill-tip' : sets('through-cut') ? 'through-cut' : 'table',
    fouledHoles: fouledHolesOf(question),
    findings: [...strapsBesideBars(question), ...holesThatTip(question)],
  }
}

function fouledHolesOf({ part, cuts, wishes, bars }: TableQuestion): readonly (readonly number[])[] {
  const obstacles = obstaclesOf(part, cuts, wishes)
  return bars.map((bar) => [...obstacles.index].filter((_, k) => spareMm(obstacles, k, { acrossMm: bar.acrossMm, lengthMm: bar.alongMm }, bar) < -touchMm))
}

const strapsBesideBars = ({ straps, bars }: TableQuestion): readonly TableFinding[] => straps.flatMap(({ xMm, yMm }, index): readonly TableFinding[] => {
  const over = bars.some((bar) => within(xMm, bar.xMm, bar.xMm + bar.alongMm) && within(yMm, bar.yMm, bar.yMm + bar.acrossMm))
  return over ? [] : [{ code: 'strap-not-over-bar', index }]
})

/** Holes, through or blind, outside the outline of all that the bars carry of the part; one that may stand anywhere along is not judged. */
function holesThatTip({ part, cuts, bars }: TableQuestion): readonly TableFinding[] {
  const carried = hullOf(bars.flatMap((bar) => cornersUnder(part, bar)))
  return cuts.flatMap((cut, index): readonly TableFinding[] =>
    (cut.kind !== 'hole' || cut.xMm === null || isInside(carried, [cut.xMm, cut.yMm]) ? [] : [{ code: 'tips-under-thrust', index }]))
}

/** The corners of what of a bar is under the part; none where it stands beside it. */
function cornersUnder(part: Part, bar: TableBar): readonly Point[] {
  const [x0, x1] = [Math.max(0, bar.xMm), Math.min(part.alongJawsMm!, bar.xMm + bar.alongMm)]
  const [y0, y1] = [Math.max(0, bar.yMm), Math.min(part.betweenJawsMm!, bar.yMm + bar.acrossMm)]
  return x1 < x0 - touchMm || y1 < y0 - touchMm ? [] : [[x0, y0], [x1, y0], [x1, y1], [x0, y1]]
}

const within = (mm: number, fromMm: number, toMm: number): boolean => mm >= fromMm - touchMm && mm <= toMm + touchMm
