import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readTableCase } from '#engine/setup/table/read-table.ts'
import { answerTable } from '#engine/setup/table/answer-table.ts'
import { thickestAtEdges } from '#engine/setup/table/thickest.ts'

const part = { betweenJawsMm: 100, alongJawsMm: 120, heightMm: 20 }
const bars = (thicknessMm: number) => [{ xMm: 0, yMm: 0, thicknessMm, lengthMm: 120 }, { xMm: 0, yMm: 100 - thicknessMm, thicknessMm, lengthMm: 120 }]
const asked = (yMm: number, diameterMm: number, holeAirMm?: number) => ({
  part, cuts: [{ kind: 'hole', xMm: 60, yMm, diameterMm }], bars: bars(1), ...(holeAirMm === undefined ? {} : { wishes: { holeAirMm } }),
})
const thickest = (raw: object) => thickestAtEdges(readTableCase(raw).question)

// By hand: a hole of 10 with its centre 15 from the edge spans 10 to 20; 0.5 of air leaves 9.5, 2 of air leaves 8.
describe('bars along the edges of a part on the table', () => {
  it('leaves 9.5 beside a 10 mm hole 15 from the edge, 8 where 2 mm of air are wished', () => {
    expect(thickest(asked(15, 10)).frontMm).toBeCloseTo(9.5, 9)
    expect(thickest(asked(15, 10, 2)).frontMm).toBeCloseTo(8, 9)
    expect(thickest(asked(85, 10)).backMm).toBeCloseTo(9.5, 9)
  })

  it('asks nothing of the bars where nothing comes out below', () => {
    expect(thickest({ part, cuts: [{ kind: 'hole', xMm: 60, yMm: 15, diameterMm: 10, through: false, depthMm: 5 }], bars: bars(1) })).toEqual({ frontMm: null, backMm: null })
  })

  it('agrees with the table itself: that thick is clear, a little thicker is not', () => {
    fc.assert(fc.property(fc.double({ min: 8, max: 45, noNaN: true }), fc.double({ min: 1, max: 12, noNaN: true }), (yMm, diameterMm) => {
      const most = thickest(asked(yMm, diameterMm)).frontMm!
      fc.pre(most > 0.1)
      expect(answerTable({ ...asked(yMm, diameterMm), bars: bars(most) }).fouledHoles[0]).toEqual([])
      expect(answerTable({ ...asked(yMm, diameterMm), bars: bars(most + 0.01) }).fouledHoles[0]).toEqual([0])
    }))
  })
})
