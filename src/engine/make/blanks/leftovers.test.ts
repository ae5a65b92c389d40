import { describe, expect, test } from 'vitest'
import type { BarCut, PlateCut } from '#model/blank.ts'
import { leftOfBars, leftOfPlate, usefulFor } from '#engine/make/blanks/leftovers.ts'

// Expected sizes by hand: every piece takes its length and one kerf.
const useful = { longMm: 100, narrowMm: 10 }
const bars: BarCut = { steel: 'C45U', condition: 'drawn', widthMm: 30, thicknessMm: 10, kerf: 1.5, stock: [{ length: 1000, available: 1, id: 'one' }, { length: 1000, available: null, id: 'bought' }, { length: 400, available: 2, id: 'short' }], pieces: [[303.5, 5], [150, 2]], of: [{ heightMm: 30, blanks: 2 }, { heightMm: 30, blanks: 1 }] }
const plate: PlateCut = { stockId: 'plate', plateWidth: 260, plateLength: 1000, kerf: 1.5, pieces: [] }

describe('what is left of stock lengths', () => {
  test('is the length less every piece and its cut', () => {
    expect(leftOfBars(bars, { plan: [{ stockLength: 1000, pieces: [2, 0], times: 1 }, { stockLength: 400, pieces: [0, 1], times: 1 }] }, useful)).toEqual([
      { stockId: 'one', form: 'length', lengthMm: 390, widthMm: 30, count: 1 }, { stockId: 'short', form: 'length', lengthMm: 248.5, widthMm: 30, count: 1 },
    ])
  })
  test('comes from what is there before what is bought as needed', () => {
    expect(leftOfBars(bars, { plan: [{ stockLength: 1000, pieces: [2, 0], times: 3 }] }, useful).map(({ stockId, count }) => [stockId, count])).toEqual([['one', 1], ['bought', 2]])
  })
  test('is not kept where it is shorter than the shortest bar', () => {
    // 1000 − 3 × 305 = 85
    expect(leftOfBars(bars, { plan: [{ stockLength: 1000, pieces: [3, 0], times: 1 }] }, useful)).toEqual([])
    expect(leftOfBars(bars, { plan: [{ stockLength: 1000, pieces: [3, 0], times: 1 }] }, usefulFor(150, [120, 80]))).toHaveLength(1)
  })
})

describe('what is left of a plate', () => {
  test('is the rest below the last cut, as wide as the plate, and strip ends that are long enough', () => {
    expect(leftOfPlate(plate, { leastPlateLength: 93.5, plan: [[46, [[125, 46, 2]]], [46, [[125, 46, 1]]]] }, useful)).toEqual([
      { stockId: 'plate', form: 'plate', lengthMm: 905, widthMm: 260, count: 1 }, { stockId: 'plate', form: 'plate', lengthMm: 133.5, widthMm: 46, count: 1 },
    ])
  })
  test('has its longer side as its length, also where the plate was turned', () => {
    // 260 − 32 − 1.5 and 1000 − 2 × (121 + 1.5)
    expect(leftOfPlate({ ...plate, plateWidth: 1000, plateLength: 260 }, { leastPlateLength: 32, plan: [[32, [[121, 32, 2]]]] }, useful).map(({ lengthMm, widthMm }) => [lengthMm, widthMm])).toEqual([[1000, 226.5], [755, 32]])
  })
  test('counts ends that are alike together', () => {
    expect(leftOfPlate({ ...plate, plateLength: 95 }, { leastPlateLength: 93.5, plan: [[46, [[125, 46, 1]]], [46, [[125, 46, 1]]]] }, useful)).toEqual([{ stockId: 'plate', form: 'plate', lengthMm: 133.5, widthMm: 46, count: 2 }])
  })
  test('is nothing where no way was found, where the plate is too short, and where it is swarf', () => {
    expect(leftOfPlate(plate, { leastPlateLength: null, plan: [] }, useful)).toEqual([])
    expect(leftOfPlate(plate, { leastPlateLength: 1001, plan: [] }, useful)).toEqual([])
    expect(leftOfPlate(plate, { leastPlateLength: 990, plan: [] }, useful)).toEqual([])
  })
})
