// When a bar is due, magnetised or an orphan: what the shop turned on and what it did, common practice, no source.
import { describe, expect, test } from 'vitest'
import { barsFrom, conditionsOf, type RackFacts } from '#engine/rack/bar-from.ts'
import { isOverdue, whoHasWhat } from '#engine/rack/who-has-what.ts'
import type { BarEvent, BarEventKind } from '#model/bar-event.ts'
import type { BarRecord } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import { newShop } from '#model/shop-record.ts'

const day = (n: number) => new Date(Date.UTC(2026, 2, n, 8)).toISOString()
const bar = (id: string): BarRecord => ({ id, saw: {}, code: 'ABCD2345', name: id, thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 100, matesId: 'M', slotId: null, where: { at: 'slot' }, note: '' })
const event = (of: string, kind: BarEventKind, n: number): BarEvent => ({ id: `${of}-${kind}-${n}`, bar: of, kind, undoes: null, note: '', person: 'KM', device: 'd', atIso: day(n) })
const read = (of: string, n: number, method: Check['method'], heightMm = 25): Check =>
  ({ id: `${of}-${method}-${n}`, method, replaces: null, ...nothingTaken, note: '', person: 'KM', device: 'd', atIso: day(n), readings: [{ bar: of, station: 0, xMm: null, ...onTheFirstLine, text: '', heightMm }] })
const facts = (more: Partial<RackFacts>): RackFacts => ({ bars: [bar('a'), bar('b')], checks: ['a', 'b'].map((id) => read(id, 1, 'stated')), events: ['a', 'b'].map((id) => event(id, 'looked over', 2)), shop: newShop, ...more })
const conditionOf = (of: Partial<RackFacts>) => conditionsOf(facts(of)).get('a')!

describe('what falls due', () => {
  test('nothing, until the shop turns it on', () => expect(conditionOf({ today: '2036-01-01' })).toMatchObject({ trust: 'trusted', due: null }))
  test('after so many days since the last look', () => {
    const shop = { ...newShop, due: { days: 30, setups: null } }
    expect(conditionOf({ shop, today: '2026-03-31' })).toMatchObject({ trust: 'trusted', due: { onDay: '2026-04-01', setupsLeft: null, isDue: false } })
    expect(conditionOf({ shop, today: '2026-04-01' })).toMatchObject({ trust: 'look first', open: ['due'], due: { isDue: true } })
    expect(conditionOf({ shop, today: '2026-04-01', events: [event('a', 'looked over', 2), event('a', 'looked over', 20)] })).toMatchObject({ trust: 'trusted' })
  })
  test('after so many setups since', () => {
    const shop = { ...newShop, due: { days: null, setups: 2 } }, setups = [1, 3, 4].map((n) => ({ bars: ['a'], usedAtIso: day(n) }))
    expect(conditionOf({ shop, setups: setups.slice(0, 2) })).toMatchObject({ trust: 'trusted', due: { setupsLeft: 1 } })
    expect(conditionOf({ shop, setups })).toMatchObject({ trust: 'look first', open: ['due'], due: { setupsLeft: 0 } })
  })
})

test('a bar from the magnetic chuck is to be demagnetised, whatever its trust', () => {
  const on = [event('a', 'looked over', 2), event('a', 'on the chuck', 3)]
  expect(conditionOf({ events: on })).toMatchObject({ trust: 'trusted', magnetised: true })
  expect(barsFrom(facts({ events: on }), { viseId: null })[0]).toMatchObject({ magnetised: true })
  expect(conditionOf({ events: [...on, event('a', 'demagnetised', 4)] }).magnetised).toBeNull()
  const seen: Check = { ...read('a', 5, 'rock'), readings: [], looks: [{ bar: 'a', wiped: true, stoned: true, rock: 'none', feelerText: '', feelerUm: null, seen: ['magnetised'] }] }
  expect(conditionOf({ events: [event('a', 'looked over', 2), event('a', 'demagnetised', 4)], checks: [read('a', 1, 'stated'), seen] }).magnetised).toBe(true)
})

describe('an orphan stops being a pair', () => {
  const matesOf = (events: readonly BarEvent[], checks: readonly Check[] = []) => barsFrom(facts({ events, checks: [...facts({}).checks, ...checks] }), { viseId: null }).map(({ mates }) => mates ?? null)
  test('when its mate is gone, in work, or ground without it', () => {
    expect(matesOf([])).toEqual(['M', 'M'])
    expect(matesOf([event('b', 'gone', 3)])).toEqual([null, null])
    expect(matesOf([event('b', 'in work', 3)])).toEqual([null, null])
    expect(matesOf([event('b', 'reground', 3)])).toEqual([null, null])
    expect(matesOf([event('b', 'knocked', 3), event('b', 'signed out', 4)])).toEqual(['M', 'M'])
  })
  test('not when both were ground at once, or when it was measured since', () => {
    expect(matesOf([event('a', 'reground', 3), event('b', 'reground', 3)])).toEqual(['M', 'M'])
    expect(matesOf([event('b', 'reground', 3)], [read('b', 4, 'micrometer')])).toEqual(['M', 'M'])
    expect(matesOf([event('b', 'reground', 3)], [read('b', 4, 'stated')])).toEqual([null, null])
  })
  test('of six the others stay', () => {
    const bars = ['a', 'b', 'c', 'd', 'e', 'f'].map(bar), together = barsFrom(facts({ bars, checks: bars.map(({ id }) => read(id, 1, 'stated')), events: [event('a', 'gone', 3), event('b', 'reground', 3), event('c', 'reground', 4), event('d', 'reground', 4)] }), { viseId: null })
    const keys = together.map(({ mates }) => mates ?? null)
    expect(keys.slice(0, 2)).toEqual([null, null])
    expect(keys[2]).toBe(keys[3])
    expect(keys[4]).toBe(keys[5])
    expect(keys[2]).not.toBe(keys[4])
  })
})

test('who has what: longest away first, overdue from the day after', () => {
  const away = (id: string, who: string, sinceIso: string, dueOn?: string): BarRecord => ({ ...bar(id), where: { at: 'out', who, to: 'person', sinceIso, ...(dueOn ? { dueOn } : {}) } })
  const holdings = whoHasWhat([away('a', 'JO', day(3)), away('b', 'jo ', day(1), '2026-03-09'), away('c', 'AB', day(1)), bar('d'), { ...bar('e'), where: { at: 'out', who: 'night shift' } }], '2026-03-10')
  expect(holdings.map(({ where, bars, overdue }) => [where.at === 'out' ? where.who : '', bars.map(({ id }) => id).join(''), overdue])).toEqual([['JO', 'ba', 1], ['AB', 'c', 0], ['night shift', 'e', 0]])
  expect([isOverdue(away('a', 'JO', day(1), '2026-03-10').where, '2026-03-10'), isOverdue(away('a', 'JO', day(1), '2026-03-10').where, '2026-03-11')]).toEqual([false, true])
})
