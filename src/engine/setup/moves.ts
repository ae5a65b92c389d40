import type { Place, Places } from '#model/setup.ts'
import type { Obstacles } from '#engine/setup/obstacles.ts'
import { inTheWayAtPlain } from '#engine/setup/places.ts'
import type { BarInPlan } from '#engine/setup/support.ts'
import { movedMm } from '#engine/setup/tolerance.ts'

/** From what a distance is set by hand. */
export type SetFrom = 'fixed jaw' | 'moving jaw' | 'left end' | 'right end'

/** What keeps a bar where it stands: a spacer of this width between it and a jaw, or its distance from an end of the part. */
export type Spacer = { readonly from: SetFrom; readonly spacerMm: number }

/** How one bar stands otherwise than it would with nothing in the way. */
export type Move = {
  /** Place of the bar among the bars. */
  readonly bar: number
  /** Off its jaw; null where it stands at it, and for one bar in the middle. */
  readonly across: Spacer | null
  /** Off the middle along; null where it stands in it. */
  readonly along: Spacer | null
  /** What is in the way where it belongs, as indexes into the cuts. */
  readonly holes: readonly number[]
}

/** The bars that do not stand where they belong, and what forced them off. A bar alone is off where it is not in the middle. */
export function movesOf(obstacles: Obstacles, bars: readonly BarInPlan[], { status, places }: Places): readonly Move[] {
  const acrossMm = obstacles.part.betweenJawsMm
  if (acrossMm === null || status === 'fouled') return []
  const inTheWay = inTheWayAtPlain(obstacles, bars)
  return places.flatMap((place, k) => {
    const bar = bars[k]!, across = acrossMoveOf(acrossMm, bar, place, bars.length === 1 ? null : k), along = alongMoveOf(obstacles, bar, place)
    return across === null && along === null ? [] : [{ bar: k, across, along, holes: inTheWay[k]! }]
  })
}

/** What sets one bar across: its distance from its own jaw; for a bar alone from the nearer one. */
export function spacerAcross(partMm: number, bar: BarInPlan, { yMm }: Place, k: number | null): Spacer {
  const fromMovingMm = partMm - bar.acrossMm - yMm
  const isFixed = k === null ? yMm <= fromMovingMm : k === 0
  return isFixed ? { from: 'fixed jaw', spacerMm: yMm } : { from: 'moving jaw', spacerMm: fromMovingMm }
}

function acrossMoveOf(partMm: number, bar: BarInPlan, place: Place, k: number | null): Spacer | null {
  const spacer = spacerAcross(partMm, bar, place, k), belongsMm = k === null ? (partMm - bar.acrossMm) / 2 : 0
  return Math.abs(spacer.spacerMm - belongsMm) > movedMm ? spacer : null
}

/** From the end of the part that is nearer. */
function alongMoveOf({ part: { alongJawsMm } }: Obstacles, bar: BarInPlan, { xMm }: Place): Spacer | null {
  if (alongJawsMm === null) return null
  const rightMm = alongJawsMm - bar.lengthMm - xMm
  if (Math.abs(xMm - rightMm) <= 2 * movedMm) return null
  return xMm < rightMm ? { from: 'left end', spacerMm: xMm } : { from: 'right end', spacerMm: rightMm }
}
