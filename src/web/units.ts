import type { Units } from '#model/shop-record.ts'
import { plainUnits, type Terms, termsFor } from '#words/terms.ts'
import { useDevice } from '#web/device.ts'
import { type ShopState, useShop } from '#web/shop-store.ts'

/** The units of the person at this device; without one, or where they left it to the shop, the shop's. */
export function useUnits(): Units {
  return unitsIn(useShop().shop, useDevice().person?.id ?? null)
}

export function useTerms(): Terms {
  return termsFor(useUnits().words)
}

export function unitsIn(shop: ShopState['shop'], personId: string | null): Units {
  if (shop === null) return plainUnits
  return shop.people.find(({ id }) => id === personId)?.units ?? shop.shop.units
}
