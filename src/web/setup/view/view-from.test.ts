import { describe, expect, it } from 'vitest'
import { emptyCutForm, emptySetupForm } from '#engine/setup/form.ts'
import type { HoleForm, SetupForm } from '#model/setup-form.ts'
import { inventedShop } from '#web/setup/invented-shop.ts'
import { type Bench, benchFrom } from '#web/setup/view/bench.ts'
import { choiceKey } from '#web/setup/view/choice-key.ts'
import { isRefused, viewFrom } from '#web/setup/view/view-from.ts'

const benchOf = (...pairs: Parameters<typeof inventedShop>[0]): Bench => benchFrom(inventedShop(pairs), 'vise')!
const fives = [5, 10, 15, 20, 25, 30, 35, 40, 45].map((heightMm) => ({ heightMm, name: `P${heightMm}`, measuredUm: [0, 1] as const }))
const form = (fields: Partial<SetupForm>): SetupForm => ({ ...emptySetupForm('mm'), height: '19', offTop: '6', ...fields })
const hole = (fields: Partial<HoleForm>): HoleForm => ({ ...(emptyCutForm('hole') as HoleForm), diameter: '8.5', across: '6', ...fields })

describe('two numbers, then an answer', () => {
  // By hand: seat 35 → grip 45 − 35 = 10, stick-out 35 + 19 − 45 = 9, clear of the jaws 9 − 6 = 3; 30 leaves the cutter 45 − (30 + 19 − 6) = 2 below the jaws.
  it('waits for the height alone', () => {
    expect(viewFrom(form({ height: ' ' }), benchOf(...fives), null)).toMatchObject({ waits: true, refusal: null, answered: null })
  })

  it('has the pair, its numbers and what is nearest on either side', () => {
    const { answered } = viewFrom(form({}), benchOf(...fives), null), shown = answered!.shown!
    if (isRefused(shown)) throw new Error('the pair was refused')
    expect(shown.bars).toEqual(['35-P35-1', '35-P35-2'])
    expect([shown.gripMm, shown.stickOutMm, shown.airMm!].map((mm) => Math.round(mm * 10) / 10)).toEqual([10, 9, 3])
    const nearest = answered!.nearest.map(({ rejection, why }) => [rejection.bars[0], why.map(({ code }) => code), why[0]!.facts])
    expect(nearest).toContainEqual(['40-P40-1', ['too-high'], { gripMm: 5, underMm: 2.8 }])
    expect(nearest).toContainEqual(['30-P30-1', ['too-low'], { limit: 'cutter-over-jaw', belowMm: 2 }])
  })

  it('finds a kept stack again, of which only the bars are known', () => {
    const bench = benchOf({ heightMm: 20, name: 'low', thicknessMm: 12 }, { heightMm: 15, name: 'top', thicknessMm: 10 })
    const stack = viewFrom(form({}), bench, null).answered!.answer.choices.find(({ stand }) => stand === 'stack')!
    expect(viewFrom(form({}), bench, `stack:${stack.bars.join(',')}`).answered!.shown).toMatchObject({ stand: 'stack', bars: stack.bars })
  })

  it('shows what was tapped: another choice, or one that does not serve with its reasons', () => {
    const bench = benchOf(...fives, { heightMm: 34, name: 'Q' }), first = viewFrom(form({}), bench, null).answered!
    const other = first.answer.choices.find(({ bars }) => bars[0] === '34-Q-1')!
    expect(viewFrom(form({}), bench, choiceKey(other)).answered!.shown).toMatchObject({ bars: ['34-Q-1', '34-Q-2'] })
    expect(viewFrom(form({}), bench, choiceKey({ stand: 'on edge', bars: ['20-P20-1', '20-P20-2'] })).answered!.shown).toMatchObject({ rejection: { bars: ['20-P20-1', '20-P20-2'], reasons: ['too-low'] } })
    expect(viewFrom(form({}), bench, 'on edge:nobody,nothing').answered!.shown).toMatchObject({ bars: first.answer.choices[0]!.bars })
  })
})

describe('cuts', () => {
  it('leave the answer as it was until all their sizes are there', () => {
    const { answered, counted } = viewFrom(form({ between: '38', along: '60', cuts: [hole({ across: '' })] }), benchOf(...fives), null)
    expect(answered!.question.cuts.map(({ kind }) => kind)).toEqual(['face'])
    expect(counted.unfinished).toEqual([{ of: 'cut', line: 0 }])
  })

  // By hand: 6 + 8.5/2 + 0.5 = 10.75.
  it('drive the bar at the fixed jaw inboard', () => {
    const { answered } = viewFrom(form({ between: '38', along: '60', cuts: [hole({ along: '10' }), hole({ along: '50' })] }), benchOf(...fives), null)
    expect(answered!.shown).toMatchObject({ status: 'inboard', places: [{ yMm: 10.75 }, { yMm: 32 }] })
  })

  it('that lie under none of the pairs make it say so, with what to make', () => {
    const { answered } = viewFrom(form({ offTop: '16' }), benchOf({ heightMm: 30, name: 'only' }), null)
    expect(answered!.answer.choices).toEqual([])
    // By hand: 45 + 16 + 1 − 19 = 43; grip auto 0.6 · 3 = 1.8 → 43.2.
    expect(answered!.answer.make!.lowMm).toBeCloseTo(43, 9)
    expect(answered!.answer.make!.highMm).toBeCloseTo(43.2, 9)
    expect(answered!.shown).toMatchObject({ rejection: { bars: ['30-only-1', '30-only-2'] } })
  })
})

describe('what is refused', () => {
  it.each([
    ['text', { height: 'abc' }, 'not-a-number', 'height'],
    ['zero', { height: '0' }, 'size-not-positive', 'height'],
    ['negative', { offTop: '-1' }, 'depth-negative', 'offTop'],
    ['not a number', { between: 'NaN' }, 'not-a-number', 'between'],
    ['more than any bench', { along: '1e308' }, 'not-a-number', 'along'],
    ['wider than the vise opens', { between: '101' }, 'part-wider-than-opening', 'between'],
    ['deeper than the part', { offTop: '19.1' }, 'cut-deeper-than-part', 'offTop'],
  ])('%s names the field', (_what, fields, code, path) => {
    expect(viewFrom(form(fields), benchOf(...fives), null)).toMatchObject({ waits: false, answered: null, refusal: { code, path } })
  })

  it('names the line of the screen, not of the lines that are counted', () => {
    const cuts = [hole({ across: '' }), hole({ along: '61' })]
    expect(viewFrom(form({ between: '38', along: '60', cuts }), benchOf(...fives), null).refusal).toMatchObject({ code: 'hole-off-part', path: 'cuts[1].along' })
  })
})

it('takes the shop’s own limit for a use', () => {
  const shop = inventedShop([{ heightMm: 35, name: 'far apart', measuredUm: [0, 8] }]), strict = { ...shop, shop: { ...shop.shop, limitsUm: { ...shop.shop.limitsUm, milling: 7 } } }
  expect(viewFrom(form({}), benchFrom(shop, 'vise')!, null).answered!.answer.choices).not.toEqual([])
  const { shown } = viewFrom(form({}), benchFrom(strict, 'vise')!, choiceKey({ stand: 'on edge', bars: ['35-far apart-1', '35-far apart-2'] })).answered!
  expect(shown).toMatchObject({ rejection: { reasons: ['not-matched'] }, why: [{ facts: { limitUm: 7 } }] })
  if (shown === null || !isRefused(shown)) throw new Error('the pair was not refused')
  expect(shown.why[0]!.facts['matchUm']).toBeCloseTo(8, 6)
})
