// What readings prove: own arithmetic with the limits of the shop (2, 5, 10, 25 µm); what counts as looked at is common practice, no source.
import { describe, expect, test } from 'vitest'
import type { BarEvent, BarEventKind } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check, Look, Took } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import { newShop } from '#model/shop-record.ts'
import { barFrom, barsFrom, heightsOf, provedUsesFrom } from '#engine/rack/bar-from.ts'
import { conditionOf } from '#engine/rack/condition.ts'

const record: BarRecord = { id: 'b', saw: {}, code: 'ABCD2345', name: '25', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 100, matesId: null, slotId: null, where: { at: 'slot' }, note: '' }
const day = (n: number) => `2026-03-${String(n).padStart(2, '0')}T08:00:00.000Z`
const lever: Took = {
  instrument: { id: 'i', name: 'lever', dueOn: null }, plate: null, blocks: null,
  readWith: { method: 'compare', resolutionUm: 1, limitUm: null, repeatabilityUm: 0.3, plateFlatnessUm: null, blockLimitUm: 0.3, blockUUm: null, betweenC: null, awayC: null, expansionPerC: 11.5e-6, expansionApartPerC: 1e-6 },
}
const check = (id: string, n: number, method: Check['method'], um: readonly number[], more: Partial<Check> = {}): Check => ({
  id, method, replaces: null, ...nothingTaken, zero: { on: 'block', heightMm: 25, text: '25' }, note: '', person: 'KM', device: 'd', atIso: day(n),
  readings: um.map((one, station) => ({ bar: 'b', station, xMm: um.length === 1 ? 50 : 5 + (90 * station) / (um.length - 1), ...onTheFirstLine, text: '', heightMm: 25 + one / 1000 })), ...more,
})
const look: Look = { bar: 'b', wiped: true, stoned: true, rock: 'none', feelerText: '', feelerUm: null, seen: [] }
const event = (kind: BarEventKind, n: number): BarEvent => ({ id: `e-${kind}-${n}`, bar: 'b', kind, undoes: null, note: '', person: 'KM', device: 'd', atIso: day(n) })
const shop = { limitsUm: newShop.limitsUm }
const uses = (checks: readonly Check[], events: readonly BarEvent[] = []) => provedUsesFrom(record, checks, events, shop)
const trust = (checks: readonly Check[], events: readonly BarEvent[] = []) => barFrom(record, checks, events, { viseId: null }, shop)!.trust

const plate = check('plate', 2, 'compare', [0, 1, 0], { took: lever })
const quick = check('quick', 2, 'micrometer', [0, 3], { looks: [look] })

describe('a check at the plate', () => {
  test('proves what its parallelism and instrument give, and trust with it', () => {
    expect(uses([plate])).toEqual(['drilling', 'milling', 'fine milling', 'grinding'])
    expect(uses([check('c', 2, 'compare', [0, 3, 0], { took: lever })])).toEqual(['drilling', 'milling', 'fine milling'])
    expect([trust([plate]), trust([plate], [event('knocked', 1)]), trust([plate], [event('knocked', 3)])]).toEqual(['trusted', 'trusted', 'look first'])
  })
  test('without both ends and the middle proves nothing', () => {
    expect(uses([check('c', 2, 'compare', [0, 0], { took: lever })])).toEqual([])
    expect(trust([check('c', 2, 'compare', [0, 0], { took: lever })])).toBe('look first')
  })
  test('without an instrument is good for what a quick look is', () => expect(uses([{ ...plate, took: null }])).toEqual(['drilling', 'milling']))
  test('is undone by whatever spoils a bar after it, and says anew what an earlier one said', () => {
    for (const kind of ['knocked', 'drilled', 'stoned', 'reground'] as const) expect(uses([plate], [event(kind, 3)]), kind).toEqual([])
    expect(uses([plate], [event('looked over', 3)])).toHaveLength(4)
    expect(uses([plate, check('later', 4, 'compare', [0, 8, 0], { took: lever })])).toEqual(['drilling', 'milling'])
  })
  test('replaced by a correction counts no more', () => expect(uses([plate, check('mended', 3, 'compare', [0, 30, 60], { took: lever, replaces: 'plate' })])).toEqual([]))
})

// Common practice, no source: a burr stands where nobody read, and the stone takes it off.
describe('a nick or a drilling seen in a check', () => {
  const seen = (id: string, n: number, more: Partial<Look>): Check => ({ ...plate, id, atIso: day(n), looks: [{ ...look, stoned: false, ...more }] })
  test.each(['nicked', 'drilled'] as const)('%s leaves the bar to be looked at first, with that reason, until it is stoned in a check', (mark) => {
    const open = (checks: readonly Check[]) => conditionOf(record, checks, [], shop, { usedAtIso: [], today: null }).open, marked = seen('c', 3, { seen: [mark] })
    expect(open([plate, marked])).toEqual([mark])
    expect(open([plate, { ...marked, method: 'rock', readings: [] }])).toEqual([mark])
    expect(open([marked, seen('later', 4, {})])).toEqual([])
    expect(open([plate, seen('c', 3, { seen: [mark], stoned: true })])).toEqual([])
    expect([trust([marked]), trust([marked], [event('looked over', 5)])]).toEqual(['look first', 'trusted'])
  })
  test('the stone after it is enough for the drilled one alone', () => {
    expect(trust([seen('c', 3, { seen: ['drilled'] })], [event('stoned', 5)])).toBe('trusted')
    expect(trust([seen('c', 3, { seen: ['nicked', 'drilled'] })], [event('stoned', 5)])).toBe('look first')
  })
  test('a correction that does not see it takes it back', () => expect(trust([seen('c', 3, { seen: ['nicked'] }), { ...seen('mended', 4, {}), replaces: 'c' }])).toBe('trusted'))
})

describe('a quick look', () => {
  test('restores milling and drilling, never more', () => {
    expect(uses([quick])).toEqual(['drilling', 'milling'])
    expect(trust([quick], [event('knocked', 1)])).toBe('trusted')
    expect(uses([check('c', 2, 'micrometer', [0, 15], { looks: [look] })])).toEqual(['drilling'])
  })
  test('adds nothing to, and takes nothing from, a plate check before it', () => expect(uses([plate, check('q', 3, 'micrometer', [0, 0], { looks: [look] })])).toHaveLength(4))
  test.each<[string, Partial<Look>]>([['not wiped', { wiped: false }], ['not stoned', { stoned: false }], ['rock not tried', { rock: 'not tried' }]])('%s is none', (_, less) => {
    expect(uses([{ ...quick, looks: [{ ...look, ...less }] }])).toEqual([])
  })
  test('wants two readings', () => expect(uses([check('c', 2, 'micrometer', [0], { looks: [look] })])).toEqual([]))
})

describe('a failed check takes trust away', () => {
  const trusted = [event('looked over', 1)]
  test('where the bar is out for every use', () => {
    expect(trust([check('c', 2, 'compare', [0, 20, 40], { took: lever })], trusted)).toBe('look first')
    expect(trust([check('c', 2, 'compare', [0, 10, 20], { took: lever })], trusted)).toBe('trusted')
  })
  test('where it rocks, even if nothing was read', () => {
    const rocks: Check = { ...check('c', 2, 'rock', []), looks: [{ ...look, rock: 'rocks' }] }, stated = check('s', 1, 'stated', [0])
    expect(barsFrom({ bars: [record], checks: [stated, rocks], events: trusted, shop }, { viseId: null })[0]!.trust).toBe('look first')
    expect(uses([plate, { ...rocks, atIso: day(3) }])).toEqual([])
  })
  test('and a passed one restores it', () => expect(trust([check('c', 2, 'compare', [0, 20, 40], { took: lever }), { ...plate, atIso: day(3) }], trusted)).toBe('trusted'))
})

describe('the height a setup uses', () => {
  const height = (checks: readonly Check[]) => heightsOf({ bars: [record], checks, events: [] })('b')!
  test('comes from the latest check, with its uncertainty where one can be told', () => {
    expect(height([check('s', 1, 'stated', [0]), plate])).toMatchObject({ standing: 'measured', check: 'plate', atIso: day(2) })
    expect(height([plate]).heightMm).toBeCloseTo(25 + 1 / 3000, 9)
    // Step 1 µm, scatter 0.3 over 3 readings and once more for the zero, block ±0.3 µm: √(1/12 + 0.09/3 + 0.09 + 0.03) (own arithmetic)
    expect(height([plate]).uUm).toBeCloseTo(Math.sqrt(1 / 12 + 0.03 + 0.09 + 0.03), 9)
    expect(height([check('s', 1, 'stated', [0])])).toMatchObject({ standing: 'marked', uUm: null })
  })
  test('of a bar read with either face up is the local height, its bend left out', () => {
    // A bar of even height 25.004 with its middle 6 µm toward face A, on three stations: A up it reads 4, 10, 4 and lies on its ends;
    // B up it lies on its middle, tipped onto the marked end: 4, 4 and 16 (own arithmetic, geometry).
    const turned: Check = { ...check('t', 2, 'turn-over', []), readings: (['A', 'B'] as const).flatMap((face) => (face === 'A' ? [4, 10, 4] : [4, 4, 16]).map((um, station) => (
      { bar: 'b', station, xMm: [5, 50, 95][station]!, line: 0 as const, face, text: '', heightMm: 25 + um / 1000 }))) }
    expect(height([turned]).heightMm).toBeCloseTo(25.004, 9)
    expect(height([turned]).heightsUm.map(([x, um]) => [x, Math.round(um * 1e6) / 1e6 + 0])).toEqual([[5, 0], [50, 0], [95, 0]])
  })
})
