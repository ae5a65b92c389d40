import { expect, test } from 'vitest'
import { readSetupCase } from '#engine/setup/read-question.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import type { Bar, KnownHeight } from '#model/bar.ts'

const { question } = readSetupCase({ vise: { jawHeightMm: 45, jawWidthMm: 100, openingMm: 100 }, part: { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, cuts: [{ kind: 'face', depthMm: 6 }], wishes: {}, bars: [] })
const bar = (id: string, heightMm: number, known?: KnownHeight): Bar =>
  ({ id, heightMm, thicknessMm: 8, lengthMm: 150, mates: 'm', trust: 'trusted', standing: 'measured', thicknessStanding: 'measured', where: 'slot', ...(known ? { known } : {}) })
const best = (...bars: Bar[]) => chooseBars(question, indexRack(bars)).choices.find((choice) => choice.bars.length === 2)!
const of = (check: string): KnownHeight => ({ check, uUm: 3, uAloneUm: 0.3 })

// u of a difference: root of the sum of squares (GUM 5.1.2); what both share cancels (GUM F.1.2.3).
test('a match carries its uncertainty: of one check only what its bars do not share', () => {
  expect(best(bar('a', 34), bar('b', 34.002))).not.toHaveProperty('matchUUm')
  expect(best(bar('a', 34, of('c')), bar('b', 34.002))).not.toHaveProperty('matchUUm')
  expect(best(bar('a', 34, of('c')), bar('b', 34.002, of('c'))).matchUUm).toBeCloseTo(0.3 * Math.SQRT2, 12)
  expect(best(bar('a', 34, of('c')), bar('b', 34.002, of('d'))).matchUUm).toBeCloseTo(3 * Math.SQRT2, 12)
})
