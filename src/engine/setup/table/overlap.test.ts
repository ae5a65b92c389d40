import { describe, expect, test } from 'vitest'
import { doOverlap } from '#engine/setup/table/overlap.ts'

describe('two bars on the table', () => {
  // Plain geometry: along the edges of a part 60 across, 8 and 8 leave 44 between them; 30 and 30 touch; 31 and 31 do not fit.
  const alongEdges = (thickMm: number) => [{ xMm: 0, yMm: 0, alongMm: 100, acrossMm: thickMm }, { xMm: 0, yMm: 60 - thickMm, alongMm: 100, acrossMm: thickMm }] as const
  test.each([[8, false], [30, false], [31, true]])('%s thick each', (thickMm, expected) => {
    expect(doOverlap(...alongEdges(thickMm))).toBe(expected)
  })
  test('across the part, side by side', () => {
    expect(doOverlap({ xMm: 0, yMm: 0, alongMm: 8, acrossMm: 60 }, { xMm: 92, yMm: 0, alongMm: 8, acrossMm: 60 })).toBe(false)
  })
})
