import type { Deed } from '#model/deed.ts'
import type { Facts } from '#model/refusal.ts'
import type { Told, Unserved } from '#model/setup-record.ts'

/** Something done on this device, on its way to the shop: which door it goes through, and what. */
export type Entry =
  | { readonly door: 'deeds'; readonly body: Deed }
  | { readonly door: 'unserved'; readonly body: readonly Unserved[] }
  | { readonly door: 'told'; readonly body: readonly Told[] }

/** An entry as it was written down; `seq` is its place in the order. */
export type Written = { readonly entry: Entry; readonly seq: number }

/** An entry in the box; `seq` is null until it is written down on the device. */
export type Waiting = {
  /** The same for all versions of what is being typed. */
  readonly key: number
  readonly entry: Entry
  readonly seq: number | null
  /** Being typed: a newer version may take its place. Over once it is sent, for the shop may have it then. */
  readonly open: boolean
}

/** An entry that the shop refused, kept with the reason until a person has seen it. */
export type Aside = { readonly seq: number; readonly entry: Entry; readonly refusal: { readonly code: string; readonly facts: Facts } }

/** What came of sending one entry. */
export type Sent =
  | { readonly came: 'taken' }
  | { readonly came: 'refused'; readonly code: string; readonly facts: Facts }
  | { readonly came: 'away' }
  /** The shop's machine cannot keep it just now: its disk is full, say. */
  | { readonly came: 'unable'; readonly code: string; readonly facts: Facts }
  /** This device is not enrolled, or not any more. */
  | { readonly came: 'stranger' }
  | { readonly came: 'fault'; readonly id: string }
