import { describe, expect, it } from 'vitest'
import { barLabel, engravedElse, figureOf, howItStands, nameOfRest, slotOf } from '#web/setup/answer/say-choice.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { benchFrom } from '#web/setup/view/bench.ts'
import { termsFor } from '#words/terms.ts'

const mm = { length: 'mm', decimalMark: '.', words: 'UK' } as const, inches = { ...mm, length: 'in' } as const
const bench = benchFrom(inventedShop([
  { heightMm: 35, name: 'C', measuredUm: [1.4, -0.6] }, { heightMm: 34.925, name: '1 3/8' }, { heightMm: 30, name: '30 left', odd: true }, { heightMm: 10, name: 'L', thicknessMm: 12 },
]), 'vise')!
const pair = (id: string, seatMm: number, stand: 'on edge' | 'lying flat' = 'on edge') => ({ bars: [`${id}-1`, `${id}-2`], stand, seatMm })
const single = { bars: ['30-30 left-1'], stand: 'single', seatMm: 30 } as const
const stack = { bars: ['10-L-1', '10-L-2', '35-C-1', '35-C-2'], stand: 'stack', stacked: ['lying flat', 'on edge'], seatMm: 47 } as const

describe('the figure', () => {
  it('is the height as marked, in the person’s units, a fraction of an inch where it is one', () => {
    expect(figureOf(pair('35-C', 35.0004), bench, mm)).toBe('35')
    expect(figureOf(pair('34.925-1 3/8', 34.925), bench, mm)).toBe('34.925')
    expect(figureOf(pair('34.925-1 3/8', 34.925), bench, inches)).toBe('1 3/8')
  })

  it('is the seat where bars lie flat or two high', () => {
    expect(figureOf(pair('10-L', 12, 'lying flat'), bench, mm)).toBe('12')
    expect(figureOf(stack, bench, mm)).toBe('47')
  })

  it('comes with what is engraved where that is rounder', () => {
    expect(engravedElse(pair('34.925-1 3/8', 34.925), bench, mm)).toBe('1 3/8 in')
    expect(engravedElse(pair('35-C', 35), bench, inches)).toBe('35 mm')
    expect(engravedElse(pair('35-C', 35), bench, mm)).toBeNull()
    expect(engravedElse(pair('34.925-1 3/8', 34.925), bench, inches)).toBeNull()
  })
})

describe('names', () => {
  it('call a pair by its mates, a bar by what is on it, a stack by both', () => {
    expect(nameOfRest(pair('35-C', 35), bench, mm)).toBe('pair C')
    expect(nameOfRest(single, bench, mm)).toBe('bar 30 left')
    expect(nameOfRest(stack, bench, mm)).toBe('C on L lying flat')
    expect(nameOfRest({ bars: [], stand: 'bed', seatMm: 0 }, bench, mm)).toBe('no bars')
  })

  it('put the height before a name that does not say it', () => {
    expect(barLabel('35-C-1', bench, mm)).toBe('35 C')
    expect(barLabel('30-30 left-1', bench, mm)).toBe('30 left')
    expect(barLabel('34.925-1 3/8-1', bench, inches)).toBe('1 3/8')
  })

  it('name each slot once', () => {
    expect(slotOf(pair('35-C', 35), bench)).toBe('slot C')
    expect(slotOf(stack, bench)).toBe('slot L · slot C')
    expect(slotOf({ bars: [] }, bench)).toBe('–')
  })
})

it('says how it stands as far as that is not the usual way', () => {
  const terms = termsFor('UK'), usual = { stand: 'on edge', status: 'at the jaws', trust: 'trusted', where: 'slot' } as const
  expect(howItStands(usual, terms)).toEqual(['at the jaws'])
  expect(howItStands({ ...usual, stand: 'lying flat', status: 'inboard', trust: 'drill bar', where: 'here' }, terms)).toEqual(['lying flat', 'inboard', 'beater', 'in this vice'])
  expect(howItStands({ ...usual, stand: 'single', status: 'in the middle' }, terms)).toEqual(['one bar', 'in the middle'])
  expect(howItStands({ ...usual, stand: 'bed', status: 'on the bed' }, terms)).toEqual(['on the bed'])
})
