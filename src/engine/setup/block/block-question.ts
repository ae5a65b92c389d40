import type { Vise } from '#model/vise.ts'
import type { Wishes } from '#model/wishes.ts'
import type { HeightOfPair } from '#engine/setup/many/many.ts'

/** Length is end to end; of width and height the larger is across the first face, however they were given. */
export type BlockSizes = { readonly lengthMm: number; readonly widthMm: number; readonly heightMm: number }

/** A pair by its height; with its thickness it is seen whether two of it go under. */
export type BlockPair = HeightOfPair & { readonly thicknessMm: number | null }

/** What the block may rest on: a pair of the rack, one of a height that is wanted (without id), or the bed (height 0). */
export type Rest = Omit<BlockPair, 'id'> & { readonly id: string | null }

/** A block to be milled on all six sides. `heights` null: whatever height is wanted can be had. */
export type BlockQuestion = {
  readonly vise: Vise
  readonly raw: BlockSizes
  readonly finish: BlockSizes
  readonly heights: readonly BlockPair[] | null
  /** Diameter of the rod that goes between the moving jaw and a raw side. */
  readonly rodMm: number
  readonly wishes: Wishes
}
