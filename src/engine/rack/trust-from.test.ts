import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type DatedOutcome, relianceFrom } from '#engine/rack/trust-from.ts'
import { type BarEvent, type BarEventKind, barEventKinds } from '#model/bar-event.ts'
import { type Trust, trusts } from '#model/bar.ts'

const event = (kind: BarEventKind, at: number, id = `e${at}`, undoes: string | null = null): BarEvent =>
  ({ id, bar: 'b', kind, undoes, note: '', person: 'KM', device: 'd', atIso: new Date(1741075200000 + at * 60_000).toISOString() })
const trustFrom = (events: readonly BarEvent[]) => relianceFrom(events).trust
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

// What follows from the history alone; common practice, no source.
test('signing out changes nothing but for another shop; coming back says what opens', () => {
  const open = (...kinds: BarEventKind[]) => relianceFrom(['looked over' as const, ...kinds].map((kind, at) => event(kind, at))).open
  expect(open('signed out', 'back')).toEqual([])
  expect(open('signed out', 'back fine')).toEqual([])
  expect(open('signed out', 'back not looked at')).toEqual(['not looked at'])
  expect(open('signed out', 'back nicked')).toEqual(['nicked'])
  expect(open('signed out', 'back drilled')).toEqual(['drilled'])
  expect(open('signed out', 'back drilled', 'stoned')).toEqual([])
  expect(open('to another shop', 'back fine')).toEqual(['another shop'])
  expect(open('to another shop', 'knocked', 'looked over')).toEqual([])
  expect(open('on the chuck', 'demagnetised', 'marked anew')).toEqual([])
})

test('trust never rises without a check, a look, or the stone after drilling alone', () => {
  const rank = (trust: Trust): number => (trust === 'trusted' ? 1 : 0), outcome = fc.constantFrom({ kind: 'plate check', uses: ['milling'], failed: false, burrs: [] } as const, { kind: 'no proof', uses: [], failed: true, burrs: [] } as const,
    { kind: 'plate check', uses: ['milling'], failed: false, burrs: ['drilled'] } as const, { kind: 'no proof', uses: [], failed: false, burrs: ['nicked'] } as const)
  const kinds = barEventKinds.filter((kind) => kind !== 'undone')
  fc.assert(fc.property(fc.array(fc.oneof(fc.constantFrom(...kinds), outcome), { maxLength: 14 }), (list) => {
    const events: BarEvent[] = [], outcomes: DatedOutcome[] = []
    let before = relianceFrom([], [])
    list.forEach((one, at) => {
      if (typeof one === 'string') events.push(event(one, at))
      else outcomes.push({ ...one, id: `c${at}`, atIso: event('added', at).atIso })
      const now = relianceFrom(events, outcomes)
      if (rank(now.trust) > rank(before.trust)) {
        const stoned = one === 'stoned' && before.open.every((reason) => reason === 'drilled')
        expect(one === 'looked over' || stoned || (typeof one === 'object' && !one.failed && one.burrs.length === 0), JSON.stringify([list.slice(0, at + 1), before])).toBe(true)
      }
      expect(now.open.length > 0).toBe(now.trust === 'look first')
      before = now
    })
  }), { numRuns: 1000 })
})
