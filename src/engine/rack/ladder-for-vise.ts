import type { Order, OrderWanted } from '#model/order.ts'
import { orderOf } from '#engine/make/order/order.ts'
import { type Bar, isFinished } from '#model/bar.ts'
import type { Vise } from '#model/vise.ts'
import { Refusal } from '#model/refusal.ts'

/** A ladder of heights for one size of vise, as one form asks for it. */
export type LadderWanted = Pick<OrderWanted, 'thicknessMm' | 'vises' | 'use' | 'hrc' | 'dueDay'> & {
  /** How far the top height stays below the lower jaw, and the length under the jaw width. */
  readonly belowMm: number
  readonly underMm: number
  readonly stepMm: number
  readonly lowestMm: number
  /** Heights that are in the rack already with mates enough are left out. */
  readonly leaveOwned: boolean
}

/** What to order, and which rungs of the ladder the rack has already. */
export type LadderPlan = { readonly order: Order; readonly rungsMm: readonly number[]; readonly ownedMm: readonly number[] }

/** mm. A height counts as owned within this. Common practice, no source. */
const alikeMm = 0.05

/**
 * A whole ladder, planned from a vise: top a stated distance below its lower jaw, down in steps, two mates in each of so many vises, as long as the jaws are wide less a stated amount.
 *
 * @param bars  of the rack
 * @throws Refusal `field-missing` (a vise whose jaw width nobody knows), `nothing-to-order` where the rack has every rung, and as `orderOf`
 */
export function ladderForVise(vise: Vise, bars: readonly Bar[], wanted: LadderWanted): LadderPlan {
  if (vise.jawWidthMm === undefined) throw new Refusal('field-missing', { field: 'vise.jawWidthMm', given: null, needed: 'a length' })
  const { belowMm, underMm, stepMm, lowestMm, leaveOwned, ...rest } = wanted
  const whole = orderOf({ ...rest, pairs: 1, heights: { by: 'jaw', jawHeightMm: vise.lowerJawHeightMm ?? vise.jawHeightMm, belowMm, stepMm, lowestMm }, length: { by: 'jaw', jawWidthMm: vise.jawWidthMm, underMm } })
  const ownedMm = whole.heightsMm.filter((mm) => matesAt(bars, mm) >= whole.each)
  if (!leaveOwned || ownedMm.length === 0) return { order: whole, rungsMm: whole.heightsMm, ownedMm }
  const left = whole.heightsMm.filter((mm) => !ownedMm.includes(mm))
  if (left.length === 0) throw new Refusal('nothing-to-order', { field: 'stepMm', given: whole.heightsMm.length })
  return { order: orderOf({ ...rest, pairs: 1, heights: { by: 'list', heightsMm: left }, length: { by: 'length', lengthMm: whole.lengthMm } }), rungsMm: whole.heightsMm, ownedMm }
}

/** Of the bars of that height those of the largest group of mates; gone ones and those in work are none. */
function matesAt(bars: readonly Bar[], heightMm: number): number {
  const groups = new Map<string, number>()
  for (const { mates, heightMm: mm, trust } of bars) {
    if (mates !== undefined && isFinished(trust) && Math.abs(mm - heightMm) <= alikeMm) groups.set(mates, (groups.get(mates) ?? 0) + 1)
  }
  return Math.max(0, ...groups.values())
}
