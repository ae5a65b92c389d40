// Figures of the pair of the trade (readings +3 +4 +2 and +6 +5 +4 on a 25,000 block) are own arithmetic; the rest says where it is from.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { CheckForm } from '#model/check-draft.ts'
import type { InstrumentIs, InstrumentRecord } from '#model/instrument-record.ts'
import { Refusal } from '#model/refusal.ts'
import { newShop } from '#model/shop-record.ts'
import { cellsOf } from '#engine/inspect/cells.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { askedOf, checkFromDraft, readDraft } from '#engine/inspect/read-draft.ts'

const barForm = (bar: string) => ({ bar, isNew: false, name: '', thickness: '', length: '' })
const form: CheckForm = {
  method: 'compare', unit: 'mm', bars: [barForm('a'), barForm('b')], stations: 3, places: [], lines: 1, repeats: 1, instrumentId: 'lever', plateId: null, blocksId: null,
  zeroOn: 'block', zero: '25,000', zeroBar: null, closing: '', temperature: '', asFound: false, replaces: null, note: '',
}
const instrument = (id: string, figures: InstrumentIs, dueOn: string | null = null): InstrumentRecord => ({ id, saw: {}, name: id, figures, dueOn, retired: false, note: '' })
const bar = (id: string) => ({ id, saw: {}, code: 'ABCD2345', name: id, thicknessMm: 8, thicknessStanding: 'marked' as const, lengthMm: 100, matesId: null, slotId: null, where: { at: 'slot' as const }, note: '' })
const facts: InspectFacts = {
  bars: [bar('a'), bar('b')], heights: () => null, limitsUm: newShop.limitsUm, today: '2026-03-04', tables: { plateFlatnessUm: () => null, blockLimitUm: () => null },
  instruments: [
    instrument('lever', { is: 'indicator', resolutionUm: 1, limitUm: null, repeatabilityUm: 0.3 }),
    instrument('dial', { is: 'indicator', resolutionUm: 10, limitUm: 10, repeatabilityUm: null }, '2026-01-31'),
    instrument('0-25', { is: 'micrometer', resolutionUm: 1, limitUm: 4, repeatabilityUm: 1, fromMm: 0, toMm: 25 }),
  ],
}
const typedIn = (asked: CheckForm, texts: readonly string[]) => ({ form: asked, looks: {}, typed: Object.fromEntries(cellsOf(asked).map(({ key }, i) => [key, texts[i] ?? ''])) })
const pair = typedIn(form, ['+3', '+4', '+2', '+6', '+5', '+4'])
const one = (text: string, more: Partial<CheckForm> = {}) => readDraft(typedIn({ ...form, bars: [barForm('a')], ...more }, [text]), facts).cells[0]!

describe('the pair on a 25,000 block', () => {
  const { answer } = readDraft(pair, facts)

  test('25.003 and 25.005, 2 apart in the mean, at worst 3 as laid and 4 turned', () => {
    expect(answer!.bars.map(({ heightMm }) => heightMm!.toFixed(6))).toEqual(['25.003000', '25.005000'])
    expect(answer!.pair!.meanDifferenceUm).toBeCloseTo(2, 9)
    expect([answer!.pair!.worstAsLaidUm, answer!.pair!.worstTurnedUm, answer!.pair!.betterWay]).toEqual([3, 4, 'as laid'])
    expect(answer!.spreadUm).toBeCloseTo(2, 9)
  })

  test('becomes a check with the texts as typed and the places along the bar', () => {
    const check = checkFromDraft(pair, facts)
    expect(check.readings.map(({ text, xMm }) => [text, xMm])).toEqual([['+3', 5], ['+4', 50], ['+2', 95], ['+6', 5], ['+5', 50], ['+4', 95]])
    expect(check).toMatchObject({ method: 'compare', zero: { on: 'block', heightMm: 25, text: '25,000' }, took: { instrument: { id: 'lever' }, readWith: { resolutionUm: 1 } } })
  })
})

// Limits of the shop: 2 µm grinding, 5 fine milling, 10 milling, 25 drilling. Common practice, no source.
describe('what mates are fit for', () => {
  const usesOf = (texts: readonly string[], instrumentId = 'lever') =>
    Object.fromEntries(readDraft(typedIn({ ...form, instrumentId }, texts), facts).answer!.pairUses.map(({ use, verdict }) => [use, verdict]))

  test('1 µm apart: for grinding, if the instrument can prove it', () => {
    expect(usesOf(['0', '0', '0', '+1', '+1', '+1'])).toMatchObject({ grinding: 'proved' })
    const coarse = readDraft(typedIn({ ...form, instrumentId: 'dial' }, ['0', '0', '0', '+1', '+1', '+1']), facts).answer!
    expect(coarse.pairUses.find(({ use }) => use === 'grinding')).toMatchObject({ verdict: 'not-proved', provable: false })
    // (2 − 1) / 1.65 = 0.606 µm (own arithmetic; guard factor of ISO 14253-1)
    const said = coarse.findings.find(({ code, facts: about }) => code === 'instrument-too-coarse' && about.of === 'difference' && about.use === 'grinding')!
    expect(said.facts).toMatchObject({ limitUm: 2, provable: false })
    expect(said.facts.neededUUm).toBeCloseTo(1 / 1.65, 9)
  })

  test('on its limit, or nearer to it than any instrument sees, the instrument is not to blame', () => {
    const codesOf = (ums: readonly string[]) => readDraft(typedIn({ ...form, bars: [barForm('a')], instrumentId: 'dial' }, ums), facts).answer!.findings.filter(({ facts: { use } }) => use === 'grinding').map(({ code }) => code)
    expect(codesOf(['0', '+2', '0'])).toEqual(['value-at-limit'])
    expect(codesOf(['0', '+1.95', '0'])).toEqual(['value-at-limit'])
    expect(codesOf(['0', '+1.5', '0'])).toEqual(['instrument-too-coarse'])
  })

  test('a milled pair within 6 µm: for milling and drilling, not for grinding (common practice, no source)', () => {
    expect(usesOf(['0', '+3', '0', '+6', '+4', '+6'])).toMatchObject({ drilling: 'proved', milling: 'proved', grinding: 'out' })
  })
})

describe('what a hand types', () => {
  test.each<[string, Partial<CheckForm>, number]>([
    ['+3', {}, 3], ['-0.5', {}, -0.5], ['−0,5', {}, -0.5], ['.0002"', {}, 5.08], ['+0,003mm', {}, 3], ['2 µm', { unit: 'in' }, 2], ['.0002', { unit: 'in' }, 5.08], ['1 thou', {}, 25.4], ['12um', { instrumentId: 'dial' }, 12],
  ])('%s %o is %d µm, with nothing to ask', (text, more, um) => {
    expect(one(text, more)).toMatchObject({ um, wrong: null, asks: null })
    expect(one(text, more).heightMm).toBeCloseTo((more.unit === 'in' ? 25 * 25.4 : 25) + um / 1000, 9)
  })

  test.each<[string, Partial<CheckForm>, string, number, string]>([
    ['+0,003', {}, 'reading-unit-slip', 3, '+3 µm'],
    ['-0.012', { instrumentId: 'dial' }, 'reading-unit-slip', -12, '-12 µm'],
    ['25.003', {}, 'height-for-reading', 3, '+3 µm'],
    ['2', { unit: 'in' }, 'reading-unit-slip', 5.08, '+5.08 µm'],
  ])('%s %o asks at once', (text, more, code, meantUm, meant) => {
    expect(one(text, more).asks).toMatchObject({ code, facts: { meant } })
    expect(one(text, more).asks!.facts.meantUm).toBeCloseTo(meantUm, 9)
  })

  test.each<[string[], number]>([[['+12', '+13', '+130'], 10], [['+12', '+13', '+330'], 25.4]])('%s: the last is a slip of the unit away from its neighbours', (texts, factor) => {
    const { cells } = readDraft(typedIn({ ...form, bars: [barForm('a')] }, texts), facts)
    expect(cells.map(({ asks }) => asks?.facts.factor ?? null)).toEqual([null, null, factor])
  })

  test.each<[string, number]>([['250,03', 10], ['0.984', 1 / 25.4], ['25003', 1000]])('a height of %s beside 25.003 is asked about', (text, factor) => {
    const { cells } = readDraft(typedIn({ ...form, method: 'micrometer', bars: [barForm('a')], instrumentId: null }, ['25.003', text]), facts)
    expect(cells[1]!.asks).toMatchObject({ code: 'height-unit-slip' })
    expect(cells[1]!.asks!.facts.factor).toBeCloseTo(factor, 9)
    const known = readDraft(typedIn({ ...form, method: 'micrometer', bars: [barForm('a')], instrumentId: null }, [text]), { ...facts, heights: () => ({ heightMm: 25, standing: 'marked', heightsUm: [], uUm: null, uAloneUm: null, check: 'c', atIso: '' }) })
    expect(known.cells[0]!.asks).toMatchObject({ code: 'height-unit-slip' })
  })

  test('a height that the micrometer cannot read is asked about', () => {
    expect(one('30', { method: 'micrometer', instrumentId: '0-25' }).asks).toMatchObject({ code: 'outside-instrument-range' })
    // Common practice, no source: its spindle goes a little beyond the range that is marked on it.
    for (const height of ['24.998', '25.001', '25.15']) expect(one(height, { method: 'micrometer', instrumentId: '0-25' }).asks, height).toBeNull()
    expect(one('25.3', { method: 'micrometer', instrumentId: '0-25' }).asks).toMatchObject({ code: 'outside-instrument-range' })
  })

  test('what is asked about says nothing of its bar until it is answered', () => {
    const typed = typedIn({ ...form, bars: [barForm('a')] }, ['+3', '25.005', '+2']), open = readDraft(typed, facts)
    // Of what is not in doubt: +3 and +2.
    expect(open.answer!.bars[0]!.shape!.parallelismUm).toBeCloseTo(1, 9)
    const answered = readDraft(typed, facts, new Set([askedOf(open.cells[1]!)]))
    expect(answered.cells.map(({ asks }) => asks)).toEqual([null, null, null])
    expect(answered.answer!.bars[0]!.shape!.parallelismUm).toBeCloseTo(23.005, 9)
  })

  test('what cannot be read is said in its place and stops nothing else', () => {
    const { cells, wrong, answer } = readDraft(typedIn({ ...form, closing: 'x', temperature: '21 °C' }, ['+3', '+-', '+2']), facts)
    expect(cells.map((cell) => cell.wrong?.code ?? null)).toEqual([null, 'not-a-number', null, null, null, null])
    expect(Object.keys(wrong)).toEqual(['closing'])
    expect(answer!.bars.map(({ id }) => id)).toEqual(['a'])
  })
})

describe('findings', () => {
  const codes = (texts: readonly string[], more: Partial<CheckForm>) => readDraft(typedIn({ ...form, ...more }, texts), facts).answer!.findings.map(({ code }) => code)
  const still = ['0', '0', '0', '0', '0', '0']

  test('an instrument past its day', () => {
    expect(codes(still, { instrumentId: 'dial' })).toContain('tool-overdue')
    expect(codes(still, {})).not.toContain('tool-overdue')
  })
  test('a zero that came back elsewhere, told once', () => {
    expect(codes(still, { closing: '+2' }).filter((code) => code === 'zero-drifted')).toHaveLength(1)
    expect(codes(still, { closing: '0' })).not.toContain('zero-drifted')
  })
  test('a lone high reading', () => expect(codes(['0', '0', '+8', '0', '0'], { stations: 5, bars: [barForm('a')] })).toContain('lone-high-reading'))
  test('no instrument, no plate, no temperature', () => {
    expect(codes(still, { instrumentId: null })).toContain('instrument-not-named')
    expect(codes(still, {})).toEqual(expect.arrayContaining(['part-not-known', 'temperature-not-told']))
    expect(codes(still, { temperature: '27' })).toContain('temperature-away')
  })
})

describe('a check is kept only whole', () => {
  const refused = (draft: Parameters<typeof checkFromDraft>[0]): Refusal => {
    try { checkFromDraft(draft, facts) } catch (error) { if (error instanceof Refusal) return error }
    throw new Error('was kept')
  }
  test.each<[string, Parameters<typeof checkFromDraft>[0], object]>([
    ['reading-missing', typedIn(form, ['+3', '+4', '', '+6', '+5', '+4']), { cell: 'a/0/A/2/0', bar: 'a', station: 2 }],
    ['not-a-number', typedIn(form, ['+3', 'x', '+2', '+6', '+5', '+4']), { cell: 'a/0/A/1/0', given: 'x' }],
    ['field-missing', { ...pair, form: { ...form, zero: '' } }, { field: 'zero' }],
    ['too-few-bars', typedIn({ ...form, bars: [] }, []), { field: 'bars' }],
    ['nothing-checked', typedIn({ ...form, method: 'rock' }, []), {}],
    ['place-beyond-bar', { ...pair, form: { ...form, places: ['10', '50', '101'] } }, { field: 'places[2]' }],
  ])('%s', (code, draft, about) => expect(refused(draft)).toMatchObject({ code, facts: about }))

  test('further repeats may be left out', () => {
    const twice = { ...form, repeats: 2, bars: [barForm('a')] }
    expect(checkFromDraft(typedIn(twice, ['+1', '+2', '+3', '', '+2', '']), facts).readings).toHaveLength(4)
  })
})

test('the order of entry is the order the bar is moved in', () => {
  expect(cellsOf({ ...form, method: 'turn-over', bars: [barForm('a')], stations: 2, lines: 2, repeats: 2 }).map(({ key }) => key)).toEqual([
    'a/0/A/0/0', 'a/0/A/1/0', 'a/1/A/0/0', 'a/1/A/1/0', 'a/0/A/0/1', 'a/0/A/1/1', 'a/1/A/0/1', 'a/1/A/1/1',
    'a/0/B/0/0', 'a/0/B/1/0', 'a/1/B/0/0', 'a/1/B/1/0', 'a/0/B/0/1', 'a/0/B/1/1', 'a/1/B/0/1', 'a/1/B/1/1',
  ])
})

describe('what must not matter', () => {
  const ums = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 6, maxLength: 6 })
  const figures = (asked: CheckForm, texts: readonly string[]) => {
    // Whatever is asked about is meant: how readings are told from slips is tried above.
    const typed = typedIn(asked, texts), meant = new Set(cellsOf(asked).map((cell) => askedOf({ cell, text: typed.typed[cell.key]! })))
    const { bars, pair: two } = readDraft(typed, facts, meant).answer!
    return [...bars.flatMap(({ heightMm, shape, provedToUm }) => [heightMm! * 1000, shape!.parallelismUm, shape!.taperUm, shape!.crownUm!, provedToUm!]), two!.meanDifferenceUm, two!.worstAsLaidUm!, two!.worstTurnedUm!]
  }
  const alike = (a: readonly number[], b: readonly number[]) => a.forEach((value, i) => expect(value).toBeCloseTo(b[i]!, 5))

  test('the unit the readings are typed in', () => fc.assert(fc.property(ums, (um) => {
    const inUm = figures(form, um.map((one) => `${one}`))
    alike(figures(form, um.map((one) => `${(one / 1000).toFixed(3)}mm`)), inUm)
    alike(figures(form, um.map((one) => `${(one / 25_400).toFixed(12)}"`)), inUm)
    alike(figures({ ...form, unit: 'in', zero: '25 mm' }, um.map((one) => (one / 25_400).toFixed(12))), inUm)
  })))

  test('which block it was zeroed on: the height moves with it, nothing else', () => fc.assert(fc.property(ums, fc.integer({ min: -500, max: 500 }), (um, shift) => {
    const before = figures(form, um.map((one) => `${one}`)), after = figures({ ...form, zero: (25 + shift / 1000).toFixed(3) }, um.map((one) => `${one}`))
    alike(after.map((value, i) => value - (i === 0 || i === 5 ? shift : 0)), before)
  })))

  test('which end of both bars is marked: the taper changes its sign', () => fc.assert(fc.property(ums, (um) => {
    const before = figures(form, um.map((one) => `${one}`)), turned = figures(form, [...um.slice(0, 3).toReversed(), ...um.slice(3).toReversed()].map((one) => `${one}`))
    alike(turned.map((value, i) => (i === 2 || i === 7 ? -value : value)), before)
  })))
})

test('whatever is typed, it is read or said why not', () => {
  const text = fc.oneof(fc.string({ maxLength: 12 }), fc.constantFrom('', '+3', '1/0', '1,2,3', '9'.repeat(39), '-25000', '3"', '∞', '½', '+ 3'))
  const method = fc.constantFrom('compare', 'micrometer', 'turn-over', 'stated', 'rock')
  fc.assert(fc.property(fc.array(text, { minLength: 20, maxLength: 20 }), method, fc.constantFrom('mm', 'in'), text, text, text, (texts, how, unit, zero, closing, temperature) => {
    const read = readDraft(typedIn({ ...form, method: how as CheckForm['method'], unit: unit as 'mm' | 'in', zero, closing, temperature }, texts), facts)
    for (const cell of read.cells) expect(cell.text.trim() === '' || cell.um !== null || cell.heightMm !== null || cell.wrong !== null, JSON.stringify(cell)).toBe(true)
    try { checkFromDraft(typedIn({ ...form, method: how as CheckForm['method'], zero }, texts), facts) } catch (error) { expect(error).toBeInstanceOf(Refusal) }
  }))
})
