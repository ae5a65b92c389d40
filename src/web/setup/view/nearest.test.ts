import { describe, expect, it } from 'vitest'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { benchFrom } from '#web/setup/view/bench.ts'
import { neighboursOf, pairsNear } from '#web/setup/view/nearest.ts'

const { rack } = benchFrom(inventedShop([
  ...[10, 20, 30, 40, 50].map((heightMm) => ({ heightMm, name: 'set' })), { heightMm: 40, name: 'twin', measuredUm: [10, 10] }, { heightMm: 33, name: 'odd', odd: true },
]), 'vise')!
const heights = (found: readonly { readonly seatMm: number }[]) => found.map(({ seatMm }) => Math.round(seatMm))

describe('what stands just outside the heights that work', () => {
  it('is the next two heights on either side, each once, the nearer first', () => {
    expect(heights(neighboursOf(rack, 'on edge', { lowMm: 28, highMm: 32 }))).toEqual([40, 50, 20, 10])
  })

  it('does not count a height at the very end of them', () => {
    expect(heights(neighboursOf(rack, 'on edge', { lowMm: 30, highMm: 40.02 }))).toEqual([50, 20, 10])
  })

  it('is named once where it is both too high and too low', () => {
    expect(heights(neighboursOf(rack, 'on edge', { lowMm: 41, highMm: 38 }))).toEqual([40, 50, 30])
  })

  it('is nothing beyond the ends of the rack', () => {
    expect(neighboursOf(rack, 'on edge', { lowMm: 5, highMm: 60 })).toEqual([])
  })

  it('looks at bars by themselves where one carries the part', () => {
    expect(heights(neighboursOf(rack, 'single', { lowMm: 35, highMm: 36 }, 1))).toEqual([40, 33])
  })
})

describe('a height asked about', () => {
  it('is answered by every pair of that height', () => {
    expect(pairsNear(rack, 'on edge', 40).map(({ bars }) => bars[0])).toEqual(['40-set-1', '40-twin-1'])
  })

  it('where there is none, by the next up and down', () => {
    expect(heights(pairsNear(rack, 'on edge', 35))).toEqual([40, 30])
    expect(heights(pairsNear(rack, 'on edge', 99))).toEqual([50])
  })
})
