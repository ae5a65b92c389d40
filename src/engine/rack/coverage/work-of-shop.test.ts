// Windows by the rules of setup: 45 + 6 + 1 − 19 = 33 up to 45 − 10 = 35 with grip 10 (own arithmetic).
import { describe, expect, test } from 'vitest'
import { coverageOf } from '#engine/rack/coverage/coverage.ts'
import { tryASet } from '#engine/rack/coverage/try-a-set.ts'
import { fewLines, type WorkFacts, workOfShop } from '#engine/rack/coverage/work-of-shop.ts'
import { regrindOfShop } from '#engine/rack/regrind/regrind-of-shop.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import type { Bar } from '#model/bar.ts'
import type { SetupForm } from '#model/setup-form.ts'
import { newShop } from '#model/shop-record.ts'
import type { ViseRecord } from '#model/vise-record.ts'

const vise: ViseRecord = {
  id: 'v', saw: {}, name: 'Mill 1', jawWidthMm: 125, openingMm: 150, fittedJawSetId: 'jaws', retired: false, note: '', measured: null,
  jawSets: [{ id: 'jaws', name: 'standard', fixedHeightMm: 45, movingHeightMm: 45, stepHeightMm: null, face: 'smooth' }],
}
const form: SetupForm = {
  unit: 'mm', shape: 'block', height: '19', offTop: '6', proud: '', between: '38', along: '60', cuts: [], hollows: [], use: 'milling', wishes: { grip: '10', air: '1', holeAir: '', bedAir: '', gap: '', tolerance: '' },
}
const drilled: SetupForm = { ...form, offTop: '', cuts: [{ kind: 'hole', tool: 'drill', diameter: '8', across: '4', from: 'fixed', along: '30', through: true, depth: '', runThrough: '', pointAngle: '', pitch: '', leadThreads: '' }] }
const setup = (id: string, of: SetupForm) => ({ id, viseId: 'v', form: of, retired: false })
const next = { stepMm: 0.5, lowestMm: 0.5, thicknessMm: null, most: 3 }, options = { viseId: null, stacks: false, flat: false, next }
const facts = (more: Partial<WorkFacts>): WorkFacts => ({ vises: [vise], setups: [], unserved: [], shop: newShop, ...more })
const pair = (id: string, heightMm: number, thicknessMm = 8): readonly Bar[] => ['a', 'b'].map((side) => ({ id: `${id}${side}`, heightMm, thicknessMm, lengthMm: 120, mates: id, trust: 'trusted', standing: 'measured', thicknessStanding: 'measured', where: 'slot' }))
const five = Array.from({ length: fewLines }, (_, k) => setup(`s${k}`, form))

describe('the work of a shop', () => {
  test('is its saved setups and what nothing served; a typical mix beside while they are few', () => {
    const few = workOfShop(facts({ setups: [setup('s', form)] }), options)
    expect(few.lines.filter(({ from }) => from === 'typical').length).toBeGreaterThan(10)
    const { lines, question, unread } = workOfShop(facts({ setups: [...five, { ...setup('gone', form), retired: true }, setup('odd', { ...form, height: 'x' })], unserved: [{ id: 'u', viseId: 'v', form }] }), options)
    expect([lines.map(({ from }) => from), unread]).toEqual([[...five.map(() => 'setup'), 'unserved'], 1])
    expect(coverageOf(question, indexRack(pair('P', 34)))).toMatchObject({ setups: 6, served: 6 })
    expect(coverageOf(question, indexRack(pair('P', 32)))).toMatchObject({ setups: 6, served: 0, next: [{ count: 1, gained: 6, rangesMm: [[33, 35]] }] })
    expect(workOfShop(facts({ setups: five }), { ...options, viseId: 'other' }).question.setups).toEqual([])
  })

  test('a cut whose sizes are not all there does not keep its setup out', () => {
    const half: SetupForm = { ...form, cuts: [{ kind: 'step', depth: '', overJaw: true, runThrough: '', rect: null }] }
    const { question, unread, unfinished } = workOfShop(facts({ setups: [...five, setup('half', half)] }), options)
    expect([unread, unfinished, question.setups.length]).toEqual([0, 1, 6])
    expect(question.setups[5]!.asked).toEqual(question.setups[0]!.asked)
  })

  test('places among holes count: a thick pair at the jaw is in the way of the drill, a thin one not', () => {
    const { question } = workOfShop(facts({ setups: Array.from({ length: fewLines }, (_, k) => setup(`d${k}`, { ...drilled, between: '20' })) }), options)
    expect(coverageOf(question, indexRack(pair('thick', 30, 9))).unserved.map(({ why }) => why)).toEqual(five.map(() => 'no-place'))
  })

  test('a part too thin for any bar is named as work for step or soft jaws', () => {
    const { question } = workOfShop(facts({ setups: Array.from({ length: fewLines }, (_, k) => setup(`t${k}`, { ...form, height: '8', offTop: '2' })) }), options)
    expect(coverageOf(question, indexRack(pair('P', 34))).unserved.map(({ why }) => why)).toEqual(five.map(() => 'no-height-serves'))
  })
})

test('a set tried before it is bought: what it serves, and what stands too high or is too long', () => {
  const { question } = workOfShop(facts({ setups: five }), options), set = { fromMm: 10, toMm: 50, stepMm: 5, thicknessMm: 8, lengthMm: 150 }
  const tried = tryASet(question, pair('P', 32), set)
  expect(tried).toMatchObject({ now: { served: 0 }, withSet: { served: 5 }, setAlone: { served: 5 }, usefulMm: [35], vises: [{ id: 'v', tooHighMm: [45, 50], tooLong: true }] })
  // The windows and the set are given: 32.0–32.4 and 38.0–38.4 close six of seven.
  const windows = [[31, 32.4], [32, 33], [31.8, 34], [38, 39.6], [37.5, 39.6], [41, 41.4], [36, 38.4]].map(([lowMm, highMm]) => ({ viseId: null, times: 1, asked: { lowMm: lowMm!, highMm: highMm! } }))
  const asked = { ...question, setups: windows, next: { ...next, stepMm: 0.1, lowestMm: 0.1 } }, owned = tryASet(asked, [], set)
  expect(owned.withSet).toMatchObject({ setups: 7, served: 0 })
  expect(owned.coverage.next[1]).toMatchObject({ gained: 6, rangesMm: [[32, 32.4], [38, 38.4]] })
  expect(tryASet(asked, [...pair('A', 32.2), ...pair('B', 38.3)], set).withSet.served).toBe(6)
  expect(() => tryASet(asked, [], { ...set, stepMm: 0 })).toThrow('size-not-positive')
})

test('a regrind says what the new height will serve', () => {
  const { question } = workOfShop(facts({ setups: five }), options)
  expect(regrindOfShop(['Pa', 'Pb'], pair('P', 35.008), question, { faces: 1, cleanUpUm: 10, stepUm: null, stages: [{ infeedUm: 10, takesUm: 0 }], sparkOut: 2, lowUm: {} }))
    .toMatchObject({ regrind: { newHeightMm: 34.998 }, fits: 5, now: { served: 0 }, after: { served: 5 } })
})
