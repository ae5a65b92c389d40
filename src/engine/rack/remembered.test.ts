import { expect, test } from 'vitest'
import { barsFrom, type RackFacts } from '#engine/rack/bar-from.ts'
import { remembered } from '#engine/rack/remembered.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'

const check = (id: string, heightMm: number): Check => ({
  id, method: 'stated', replaces: null, ...nothingTaken, readings: [{ bar: 'a', station: 0, xMm: null, ...onTheFirstLine, text: `${heightMm}`, heightMm }], note: '', person: '', device: 'd', atIso: '2026-01-01T08:00:00.000Z',
})

test('asked the same of the same check it answers from memory, of another check or otherwise anew', () => {
  let asked = 0
  const once = remembered((one: Check, more: number | null) => { asked += 1; return `${one.id} ${more}` })
  const a = check('a', 25), b = check('b', 30)
  expect([once(a, 1), once(a, 1), once(b, 1), once(a, null), once(a, null), once({ ...a }, null)]).toEqual(['a 1', 'a 1', 'b 1', 'a null', 'a null', 'a null'])
  expect(asked).toBe(4)
})

test('a rack asked twice answers the same, with other limits, another length and a later check anew', () => {
  const facts: RackFacts = {
    shop: { limitsUm: { drilling: 25, milling: 10, fineMilling: 5, grinding: 2 } }, events: [], checks: [check('c1', 25)],
    bars: [{ id: 'a', saw: {}, code: 'ABCD2345', name: '', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150, matesId: null, slotId: null, where: { at: 'slot' }, note: '' }],
  }
  const first = barsFrom(facts, { viseId: null })
  expect(barsFrom(facts, { viseId: null })).toEqual(first)
  expect(barsFrom({ ...facts, checks: [...facts.checks, { ...check('c2', 25.01), atIso: '2026-01-02T08:00:00.000Z' }] }, { viseId: null })[0]!.heightMm).toBe(25.01)
  expect(barsFrom({ ...facts, bars: [{ ...facts.bars[0]!, lengthMm: 120 }] }, { viseId: null })[0]).toMatchObject({ heightMm: 25, lengthMm: 120 })
})
