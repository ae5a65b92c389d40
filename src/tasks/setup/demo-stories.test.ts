import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { SetupForm } from '#model/setup-form.ts'
import { openExample } from '#store/example-store.ts'
import { recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { demoParts } from '#tasks/shop/demo/demo-forms.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'
import { cardOfVise } from '#tasks/setup/card-of-vise.ts'
import { chooseFromCase, chooseFromForm } from '#tasks/setup/choose-for-vise.ts'
import { viseNamed } from '#tasks/setup/vise-named.ts'

let store: Store
beforeAll(async () => {
  store = await openExample()
  await loadDemo(store)
})
afterAll(() => store.close())

const formOf = (part: keyof typeof demoParts, more: Partial<SetupForm> = {}): SetupForm => ({ ...demoParts[part]!.form, ...more })
const ask = (viseId: string, form: SetupForm) => chooseFromForm(store, { viseId, form })

test('the demo shop holds vises, some eighty bars, parts and setups, all marked as invented', async () => {
  const { shop, vises, bars, parts, setups, checks } = await snapshotOf(store)
  expect(shop).toMatchObject({ demo: true, name: 'Invented demo shop' })
  expect([vises.length, parts.length >= 6, setups.length]).toEqual([4, true, 5])
  expect(bars.length).toBeGreaterThanOrEqual(60)
  expect(new Set(checks.map((check) => check.method))).toEqual(new Set(['stated', 'micrometer', 'compare']))
  await expect(loadDemo(store)).rejects.toMatchObject({ code: 'shop-not-empty' })
})

test('every part of the demo finds bars in a vise it belongs to', async () => {
  const vises = { 'demo-part-4': 'demo-vise-2', 'demo-part-9': 'demo-vise-2' } as { readonly [part: string]: string }
  for (const part of Object.keys(demoParts)) {
    const { answer } = await ask(vises[part] ?? 'demo-vise-1', formOf(part))
    expect(answer.choices.length, part).toBeGreaterThan(0)
  }
})

test('every setup of the demo was a choice of its rack', async () => {
  for (const setup of await recordsOf(store, 'setup')) {
    const { answer } = await chooseFromForm(store, { viseId: setup.viseId, form: setup.form, only: setup.bars, rejectedMost: 5 })
    expect(answer.choices.map(({ bars, stand }) => ({ bars, stand })), setup.title).toContainEqual({ bars: setup.bars, stand: setup.stand })
  }
})

describe('jaws 45, part 19 high, 6 off the top', () => {
  // By hand: seat 35 → grip 45 − 35 = 10, stick-out 35 + 19 − 45 = 9, clear of the jaws 9 − 6 = 3; 30 leaves the cutter 2 below the jaws.
  test('the measured pair of 35 comes first', async () => {
    const { answer, bars } = await ask('demo-vise-1', formOf('demo-part-1'))
    const [first] = answer.choices
    expect(first!.bars).toEqual(['demo-C-1', 'demo-C-2'])
    expect(first!.rank).toBe(1)
    expect(answer.choices[1]!.rank).toBe(2)
    expect([first!.gripMm, first!.stickOutMm, first!.airMm!].map((mm) => Math.round(mm * 10) / 10)).toEqual([10, 9, 3])
    expect(bars.find((bar) => bar.id === 'demo-C-1')).toMatchObject({ mates: 'C', slot: 'B4', standing: 'measured' })
    expect(answer.rejected.find(({ bars: pair }) => pair[0] === 'demo-B-1')).toMatchObject({ reasons: ['too-low'] })
  })

  test('it serves a grip of 10 asked for in full as well, and of two pairs marked alike the measured one is first', async () => {
    const { answer } = await ask('demo-vise-1', formOf('demo-part-1', { wishes: { ...formOf('demo-part-1').wishes, grip: '10' } }))
    const order = answer.choices.filter(({ stand }) => stand === 'on edge').map(({ bars }) => bars[0])
    expect(order[0]).toBe('demo-C-1')
    expect(order).toContain('demo-W-1')
    expect(answer.choices.find(({ bars }) => bars[0] === 'demo-W-1')).toMatchObject({ matchUm: null })
  })

  test('with two through holes 6 from the fixed jaw: inboard, short bars between the holes, or drill bars', async () => {
    const { answer } = await ask('demo-vise-1', formOf('demo-part-2'))
    const of = (id: string) => answer.choices.find(({ bars, stand }) => bars[0] === id && stand === 'on edge')
    // By hand: 6 + 8.5/2 + 0.5 = 10.75.
    expect(of('demo-C-1')).toMatchObject({ status: 'inboard', places: [{ yMm: 10.75 }, { yMm: 30 }] })
    expect(of('demo-S-1')).toMatchObject({ status: 'at the jaws' })
    expect(of('demo-X-1')).toMatchObject({ status: 'fouled', trust: 'drill bar', fouledHoles: [0, 1] })
  })
})

test('14 between the jaws: 8s meet, 6.35s leave 1.3, 6s serve', async () => {
  const { answer } = await ask('demo-vise-1', formOf('demo-part-3'))
  expect(answer.choices[0]!.bars).toEqual(['demo-T6-1', 'demo-T6-2'])
  const reasonsOf = (id: string) => answer.rejected.find(({ bars, stand }) => bars[0] === id && stand === 'on edge')?.reasons
  expect(reasonsOf('demo-C-1')).toEqual(['too-thick'])
  expect(reasonsOf('demo-I8-1')).toEqual(['too-thick'])
})

test('jaws 1.75 in, part 7/8 in, 3 mm off, grip 1/2 in, air 1 mm: 1 1/8 first, 1 1/4 legal with no grip to spare, 1 in refused', async () => {
  const { answer } = await ask('demo-vise-2', formOf('demo-part-4'))
  // By hand: 44.45 + 3 + 1 − 22.225 = 26.225 and 44.45 − 12.7 = 31.75.
  expect(answer.window.lowMm).toBeCloseTo(26.225, 9)
  expect(answer.window.highMm).toBeCloseTo(31.75, 9)
  expect(answer.choices[0]!.bars).toEqual(['demo-I6-1', 'demo-I6-2'])
  const highest = answer.choices.find(({ bars }) => bars[0] === 'demo-I7-1')!
  expect(highest.gripMm - 12.7).toBeLessThan(0.002)
  expect(answer.rejected.find(({ bars, stand }) => bars[0] === 'demo-I5-1' && stand === 'on edge')).toMatchObject({ reasons: ['too-low'] })
})

test('a 16 drill through on 5 mm bars: the tip would come 1.307 into the bed', async () => {
  const { answer } = await ask('demo-vise-2', formOf('demo-part-9'))
  // By hand: 8 / tan 59° + 1.5 = 6.307; with 1 of air the lowest seat is 7.307.
  expect(answer.window.lowMm).toBeCloseTo(7.307, 3)
  expect(answer.rejected.find(({ bars, stand }) => bars[0] === 'demo-K-1' && stand === 'on edge')).toMatchObject({ reasons: ['too-low'] })
})

test('a slot right through over the bar, and an end squared past the jaw: long bars do not serve as they stand', async () => {
  const slotted = (await ask('demo-vise-1', formOf('demo-part-5'))).answer
  for (const { bars, status } of slotted.choices.filter(({ stand }) => stand === 'on edge')) expect([bars, status]).toEqual([bars, 'inboard'])
  const squared = (await ask('demo-vise-1', formOf('demo-part-8'))).answer
  expect(squared.choices[0]!.bars).toEqual(['demo-R-1', 'demo-R-2'])
  expect(squared.rejected.find(({ bars, stand }) => bars[0] === 'demo-A-1' && stand === 'on edge')!.reasons).toContain('bar-in-cut')
})

test('a vise is found by name, by id, or is the one used last; its card follows', async () => {
  expect((await viseNamed(store, 'bench MILL')).id).toBe('demo-vise-3')
  expect((await viseNamed(store, 'demo-vise-4')).name).toBe('Tool room')
  expect((await viseNamed(store, null)).id).toBe('demo-vise-1')
  await expect(viseNamed(store, 'mill 9')).rejects.toMatchObject({ code: 'unknown-vise', facts: { given: 'mill 9' } })
  const card = await cardOfVise(store, 'demo-vise-4')
  expect(card.rows.length).toBeGreaterThan(20)
  // Jaws 50 and 47.5: the part has to clear the higher, the lower one grips. Pair E: 44.995 and 45, so the mean is 44.9975.
  const row = card.rows.find(({ name }) => name === 'E')!
  expect(row.worksFromMm).toBeCloseTo(6.0025, 9)
  expect(row.gripMm).toBeCloseTo(2.5025, 9)
  await expect(cardOfVise(store, 'nobody')).rejects.toMatchObject({ code: 'unknown-record' })
})

test('a case brings its own vise, or stands in one of the shop; keys nobody knows are refused', async () => {
  const part = { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, cuts = [{ kind: 'face', depthMm: 6 }]
  const own = await chooseFromCase(store, null, { vise: { jawHeightMm: 45, openingMm: 150 }, part, cuts })
  const ours = await chooseFromCase(store, 'demo-vise-1', { part, cuts })
  expect(own.answer.choices[0]!.bars).toEqual(['demo-C-1', 'demo-C-2'])
  expect(ours.answer.choices[0]!.bars).toEqual(['demo-C-1', 'demo-C-2'])
  await expect(chooseFromCase(store, 'demo-vise-1', { part: { ...part, colour: 'red' }, cuts })).rejects.toMatchObject({ code: 'unknown-key', facts: { keys: ['part.colour'] } })
  await expect(chooseFromCase(store, 'demo-vise-1', { part, cuts, bars: [] })).rejects.toMatchObject({ code: 'unknown-key', facts: { keys: ['bars'] } })
  await expect(chooseFromCase(store, 'demo-vise-1', { part: { ...part, heightMm: '19' }, cuts })).rejects.toMatchObject({ code: 'not-a-number' })
  await expect(chooseFromCase(store, 'demo-vise-1', { part: { ...part, betweenJawsMm: 151 }, cuts })).rejects.toMatchObject({ code: 'part-wider-than-opening' })
  await expect(chooseFromCase(store, 'nobody', { part, cuts })).rejects.toMatchObject({ code: 'unknown-record', facts: { field: 'viseId' } })
})
