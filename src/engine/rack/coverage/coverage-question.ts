import type { Vise } from '#model/vise.ts'
import type { Way } from '#model/wishes.ts'
import type { WindowQuestion } from '#engine/setup/window.ts'

export type ViseOfShop = Vise & { readonly id: string }

/** A setup whose heights are known already. */
export type KnownHeights = { readonly lowMm: number; readonly highMm: number }

/** A setup as it is asked of any vise, or only the heights that serve it. */
export type SetupOfShop = {
  /** The only vise it is for; null: whichever serves. */
  readonly viseId: string | null
  /** How often it comes. */
  readonly times: number
  readonly asked: Omit<WindowQuestion, 'vise'> | KnownHeights
}

/** What one would get: heights `lowestMm` + k · `stepMm`, so thick (null: thin enough for any part), at most so many. */
export type Wanted = { readonly stepMm: number; readonly lowestMm: number; readonly thicknessMm: number | null; readonly most: number }

export type CoverageQuestion = {
  readonly vises: readonly ViseOfShop[]
  readonly setups: readonly SetupOfShop[]
  readonly ways: readonly Way[]
  /** Only heights up to which the rules of thumb for stick-out are kept. */
  readonly advisedOnly: boolean
  /** Whether bars have to find a place among holes and hollows, where a setup has some. */
  readonly places: boolean
  readonly next: Wanted
}
