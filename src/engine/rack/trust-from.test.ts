import fc from 'fast-check'
import { expect, test } from 'vitest'
import { trustFrom } from '#engine/rack/trust-from.ts'
import { type BarEvent, type BarEventKind, barEventKinds } from '#model/bar-event.ts'
import { trusts } from '#model/bar.ts'

const event = (kind: BarEventKind, at: number, id = `e${at}`, undoes: string | null = null): BarEvent =>
  ({ id, bar: 'b', kind, undoes, note: '', person: 'KM', device: 'd', atIso: new Date(1741075200000 + at * 60_000).toISOString() })
const after = (...kinds: BarEventKind[]) => trustFrom(kinds.map((kind, at) => event(kind, at)))

// Common practice, no source: what a shop does with a bar after each of these.
test('a bar is looked at before it is trusted, and again after whatever may have spoilt it', () => {
  expect(after()).toBe('look first')
  expect(after('added')).toBe('look first')
  expect(after('added', 'looked over')).toBe('trusted')
  expect(after('added', 'looked over', 'knocked')).toBe('look first')
  expect(after('added', 'looked over', 'drilled')).toBe('look first')
  // The burr harms, the dimple does not: the stone takes the burr off.
  expect(after('added', 'looked over', 'drilled', 'stoned')).toBe('trusted')
  expect(after('added', 'looked over', 'knocked', 'drilled', 'stoned')).toBe('look first')
  expect(after('added', 'stoned')).toBe('look first')
  expect(after('added', 'looked over', 'stoned')).toBe('trusted')
  expect(after('added', 'looked over', 'reground')).toBe('look first')
})

test('a drill bar stays one until it is ground again', () => {
  expect(after('added', 'made drill bar')).toBe('drill bar')
  expect(after('added', 'made drill bar', 'looked over', 'stoned', 'drilled', 'knocked')).toBe('drill bar')
  expect(after('added', 'made drill bar', 'reground')).toBe('look first')
})

test('in work until it was looked over, gone until that is taken back', () => {
  expect(after('in work', 'stoned')).toBe('in work')
  expect(after('in work', 'looked over')).toBe('trusted')
  expect(after('added', 'looked over', 'gone', 'looked over', 'reground')).toBe('gone')
  expect(trustFrom([event('looked over', 1), event('gone', 2), event('undone', 3, 'u', 'e2')])).toBe('trusted')
})

test('taking back names the event, so it does not matter that a clock is slow, and can itself be taken back', () => {
  const gone = event('gone', 10), slow = event('undone', 0, 'u', 'e10')
  expect(trustFrom([event('looked over', 5), slow, gone])).toBe('trusted')
  expect(trustFrom([event('looked over', 5), slow, gone, event('undone', 0, 'v', 'u')])).toBe('gone')
})

test('the order in which events come does not matter, nor does a circle of undoings stop it', () => {
  const events = fc.array(fc.record({ kind: fc.constantFrom(...barEventKinds), at: fc.nat(3), undoes: fc.option(fc.nat(7), { nil: null }) }), { maxLength: 8 })
  fc.assert(fc.property(events, fc.array(fc.nat(), { minLength: 8, maxLength: 8 }), (made, keys) => {
    const all = made.map(({ kind, at, undoes }, n) => event(kind, at, `e${n}`, kind === 'undone' && undoes !== null && undoes < n ? `e${undoes}` : null))
    const shuffled = all.map((one, n) => ({ one, key: keys[n]! })).sort((a, b) => a.key - b.key).map(({ one }) => one)
    expect(trusts).toContain(trustFrom(all))
    expect(trustFrom(shuffled)).toBe(trustFrom(all))
  }))
  expect(trusts).toContain(trustFrom([event('gone', 0), event('undone', 1, 'u', 'v'), event('undone', 2, 'v', 'u')]))
})
