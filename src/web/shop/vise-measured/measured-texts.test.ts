import { describe, expect, it } from 'vitest'
import { viseMeasuredSchema } from '#model/vise-measured.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'
import { plainUnits } from '#words/terms.ts'
import { emptyFour, emptyMeasured, measuredBy, measuredByFour, withFound } from '#web/shop/vise-measured/measured-texts.ts'

const atIso = '2026-03-04T05:06:07.000Z'
const refused = (texts: { readonly u?: string; readonly row: string }) => refusalOf(() => measuredBy('rowBed', { ...emptyMeasured, ...texts }, plainUnits, atIso), null)

// By hand: halves of sums and differences of the four readings; the uncertainty of a difference of two is √2 of one.
describe('what is measured of a vise', () => {
  it('takes bed and lift out of the four readings', () => {
    const found = measuredByFour({ ...emptyFour, y1: '8', y2: '2', y3: '4', y4: '+20', over: '50', u: '1' }, 'mm', atIso)!
    expect(found.bed!.readings).toEqual([{ xMm: 0, yMm: 0, um: 0 }, { xMm: 0, yMm: 50, um: 3 }])
    expect(found.bed!.uUm).toBeCloseTo(Math.SQRT1_2, 12)
    expect(found.jawLift).toMatchObject({ um: 12, overMm: 50 })
    expect(viseMeasuredSchema.parse(withFound(null, found)).jawSlope).toBeNull()
  })

  it('keeps nothing of readings whose distance or uncertainty nobody knows', () => {
    expect(measuredByFour({ ...emptyFour, y1: '8', y2: '2', y3: '4', over: '50' }, 'mm', atIso)).toBeNull()
    expect(measuredByFour({ ...emptyFour, y1: '8', y2: '2', y3: '4', u: '1' }, 'mm', atIso)).toBeNull()
  })

  it('reads the short ways, and leaves what was known', () => {
    const slope = measuredBy('jawSlope', { ...emptyMeasured, u: '1', slope: '-6', slopeOver: '60' }, plainUnits, atIso)
    expect(slope.jawSlope).toMatchObject({ umPerMm: -0.1 })
    expect(slope.jawSlope!.uUmPerMm).toBeCloseTo(Math.SQRT2 / 60, 12)
    const row = measuredBy('rowBed', { ...emptyMeasured, u: '0.5', row: '18' }, plainUnits, atIso), both = withFound(withFound(null, slope), row)
    expect([both.jawSlope!.umPerMm, both.rowBed!.um, both.bed]).toEqual([-0.1, 18, null])
    const bed = measuredBy('bed', { ...emptyMeasured, u: '1', bed: ['', '2', '-3', '1'], bedAlong: '4 in', bedAcross: '80' }, plainUnits, atIso)
    expect(bed.bed!.readings.at(-1)).toEqual({ xMm: 101.6, yMm: 80, um: 1 })
  })

  it('says how in the words of the region', () => {
    const how = (words: 'US' | 'UK') => measuredBy('rowBed', { ...emptyMeasured, u: '0.5', row: '18' }, { ...plainUnits, words }, atIso).rowBed!.how
    expect([how('US'), how('UK')]).toEqual(['indicator from bed to bed', 'clock from bed to bed'])
  })

  it('refuses readings that are none', () => {
    expect(refused({ u: '1', row: 'up' })).toBe('not-a-number rowBed.um')
    expect(refused({ u: '-1', row: '3' })).toBe('uncertainty-negative uUm')
    expect(refused({ row: '3' })).toBe('field-missing uUm')
  })
})
