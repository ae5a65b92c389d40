import { Refusal } from '#model/refusal.ts'
import type { HeightOfPair } from '#engine/setup/many/many.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { refuseIdTwice } from '#engine/read/refuse-twice.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

export const readHeight = (raw: RawObject): HeightOfPair => ({ id: raw.text('id'), heightMm: raw.number('heightMm') })

/** @throws Refusal `size-not-positive`, `bar-id-twice` */
export function refuseUnfitHeights(heights: readonly HeightOfPair[]): void {
  heights.forEach(({ heightMm }, k) => {
    if (heightMm <= touchMm) throw new Refusal('size-not-positive', { field: `heights[${k}].heightMm`, given: heightMm, needed: { aboveMm: 0 } })
  })
  refuseIdTwice(heights, 'heights')
}
