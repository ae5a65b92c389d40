import type { Checked } from '#engine/inspect/checked.ts'
import type { Check } from '#model/check.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { NameOf } from '#words/wording.ts'

/** A kept check with what it says, as its certificate is made from. */
export type Certified = {
  readonly check: Check
  readonly checked: Checked
  readonly shop: Pick<ShopSnapshot, 'shop' | 'bars' | 'checks'>
  readonly units: Units
  readonly nameOf: NameOf
  readonly lengthMmOf: (bar: string) => number | null
  /** What heights count from, in words. */
  readonly zeroName: string
  /** The day of a point in time, as people of the shop write it. */
  readonly dayOf: (iso: string) => string
  /** The day it is printed on. */
  readonly today: string
}
