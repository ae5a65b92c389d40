import { describe, expect, it } from 'vitest'
import { saySum } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'

const sum = (formula: string, name: string, value: number | null, inputs: { readonly [name: string]: number | null }) => ({ formula, result: { name, value }, inputs, sources: ['SETUP-RULES'] })

describe('how a number came about, in words', () => {
  it('says the formula with names and with numbers, in the person\'s units', () => {
    const low = sum('low-cutter-over-jaw', 'lowMm', 33, { jawHeightMm: 45, depthMm: 6, airMm: 1, heightMm: 19 })
    expect(saySum(low, plainUnits)).toEqual({
      title: 'Lowest seat, for the cutter over the jaws',
      inWords: 'jaw height + depth of the cut + clear of the jaws − part height',
      worked: '45 + 6 + 1 − 19 = 33 mm',
      sources: ['SETUP-RULES'],
    })
    expect(saySum(sum('high-grip', 'highMm', 31.75, { jawHeightMm: 44.45, gripWishMm: 12.7 }), { length: 'in', decimalMark: '.', words: 'US' }).worked).toBe('1 3/4 − 1/2 = 1 1/4 in')
    expect(saySum(sum('tip-drill', 'tipMm', 4.806885, { diameterMm: 16, pointAngleDeg: 118 }), { length: 'mm', decimalMark: ',', words: 'UK' }).worked).toBe('16 / 2 / tan(118° / 2) = 4,807 mm')
  })

  it('tells the grip there is from the grip asked for', () => {
    expect(saySum(sum('stick-out-per-grip', 'stickOutPerGrip', 0.9, { stickOutMm: 9, gripMm: 10 }), plainUnits).inWords).toBe('above the jaws / grip')
    expect(saySum(sum('stick-out-per-grip', 'stickOutPerGrip', 0.6, { aboveLowerJawMm: 7.5, gripMm: 12.5 }), plainUnits).inWords).toBe('above the lower jaw / grip')
    expect(saySum(sum('high-grip', 'highMm', 37.2, { jawHeightMm: 45, gripWishMm: 7.8 }), plainUnits).inWords).toBe('jaw height − grip asked for')
  })

  it('keeps numbers apart that have decimal commas', () => {
    const least = sum('advised-high', 'advisedHighMm', 35.5, { highMm: 35.5, maxSeatMmByGrip: 40.25, maxSeatMmByThickness: null })
    expect(saySum(least, { length: 'mm', decimalMark: ',', words: 'UK' }).worked).toBe('the least of 35,5; 40,25 = 35,5 mm')
  })

  it('shows the tenths of a µm in lengths that differ by µm', () => {
    const match = sum('match-of-two', 'matchUm', 0.7, { firstMm: 28.5736, secondMm: 28.5729 })
    expect(saySum(match, plainUnits).worked).toBe('the difference of 28.5736 and 28.5729 = 0.7 µm')
    expect(saySum(match, { ...plainUnits, length: 'in' }).worked).toBe('the difference of 1.124945 and 1.124917 = 0.7 µm')
  })

  it('leaves out what was not there, and a sum that only hands a number on', () => {
    expect(saySum(sum('advised-high', 'advisedHighMm', 35, { highMm: 35, maxSeatMmByGrip: 40.25, maxSeatMmByThickness: null }), plainUnits).worked).toBe('the least of 35, 40.25 = 35 mm')
    expect(saySum(sum('low-bed', 'lowMm', 0, { bedMm: 0 }), plainUnits).worked).toBe('0 mm')
    expect(saySum(sum('place-across', 'places[1].yMm', 30, { wantedYMm: 32, movedMm: -2 }), plainUnits).worked).toBe('32 − 2 = 30 mm')
  })

  it('shows a formula it has no words for by what went in', () => {
    expect(saySum(sum('from-a-newer-engine', 'gripMm', 5, { jawHeightMm: 45 }), plainUnits)).toMatchObject({ title: 'Grip', worked: '45 = 5 mm' })
  })
})
