import type { ShopFields } from '#model/shop-record.ts'
import { dayNumber, dayOf } from '#engine/numeric/days.ts'

/** When a bar is to be looked at again, as far as the shop counts it. */
export type Due = {
  /** Null: the shop does not count days. */
  readonly onDay: string | null
  /** Setups until then; null: the shop does not count them. */
  readonly setupsLeft: number | null
  readonly isDue: boolean
}

/** How bars were used lately: when each setup with the bar was last set up, and what day it is; null: days are not counted here. */
export type Used = { readonly usedAtIso: readonly string[]; readonly today: string | null }

/**
 * When a bar that was last looked at then is due again; null where the shop has not turned that on.
 *
 * A setup that is set up again and again counts once: only its last time is kept at hand.
 */
export function dueFrom(lookedIso: string, due: ShopFields['due'] | undefined, { usedAtIso, today }: Used): Due | null {
  if (!due || (due.days === null && due.setups === null)) return null
  const onDay = due.days === null ? null : dayOf(dayNumber(lookedIso) + due.days)
  const setupsLeft = due.setups === null ? null : Math.max(0, due.setups - usedAtIso.filter((used) => used > lookedIso).length)
  return { onDay, setupsLeft, isDue: (onDay !== null && today !== null && today >= onDay) || setupsLeft === 0 }
}
