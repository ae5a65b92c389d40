import { describe, expect, test } from 'vitest'
import { bendProfile } from '#engine/inspect/bend-profile.ts'

describe('the bend along a bar', () => {
  test('is what a bent bar of even height reads, from either face', () => {
    // A centre line 5 µm high in the middle, read on three stations; with B up it rests on its middle and shows the ends down. Worked by hand.
    expect(bendProfile([0, 50, 100], [0, 5, 0], [0, -5, 0])).toEqual([0, 5, 0])
  })

  test('has nothing of a taper in it, nor of where the zero was', () => {
    const bend = bendProfile([5, 40, 75, 145], [3, 6, 6, 3 + 14], [1, 0, 2, 1])
    expect(bend[0]).toBeCloseTo(0, 12)
    expect(bend[3]).toBeCloseTo(0, 12)
    const shifted = bendProfile([5, 40, 75, 145], [13, 16, 16, 27], [1, 0, 2, 1])
    shifted.forEach((um, i) => expect(um).toBeCloseTo(bend[i]!, 12))
  })
})
