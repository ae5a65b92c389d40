import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Bar } from '#model/bar.ts'
import { Refusal } from '#model/refusal.ts'
import { ways, type Way } from '#model/wishes.ts'
import { answerCoverage } from '#engine/rack/coverage/answer-coverage.ts'
import { bestHeights } from '#engine/rack/coverage/best-heights.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { readSetupCase } from '#engine/setup/read-question.ts'

const pair = (id: string, heightMm: number, rest: object = {}) => ['a', 'b'].map((side) => ({ id: `${id}${side}`, heightMm, thicknessMm: 6, lengthMm: 150, mates: id, ...rest }))
const windows = [[31, 32.4], [32, 33], [31.8, 34], [38, 39.6], [37.5, 39.6], [41, 41.4], [36, 38.4]].map(([lowMm, highMm]) => ({ lowMm, highMm }))
const fives = [10, 15, 20, 25, 30, 35, 40, 45, 50].flatMap((height) => pair(`P${height}`, height))

describe('what is missing', () => {
  // Worked example: the windows and the set are given, that any 32.0–32.4 and any 38.0–38.4 do is seen by laying them beside each other.
  test('two heights, any 32.0 to 32.4 and any 38.0 to 38.4, close six of seven', () => {
    const { setups, served, share, unserved, next, gaps } = answerCoverage({ setups: windows, bars: fives, next: { stepMm: 0.1 } })
    expect({ setups, served, share, unserved: unserved.length }).toEqual({ setups: 7, served: 0, share: 0, unserved: 7 })
    expect(next).toMatchObject([
      { count: 1, gained: 3 },
      { count: 2, gained: 6, rangesMm: [[32, 32.4], [38, 38.4]], status: 'optimal', bound: 6 },
      { count: 3, gained: 7, rangesMm: [[32, 32.4], [38, 38.4], [41, 41.4]] },
    ])
    expect(gaps).toContainEqual({ lowMm: 38, highMm: 38.4, setups: 3 })
    const owned = answerCoverage({ setups: windows, bars: [...fives, ...pair('new', 32.2), ...pair('other', 38.1)], next: { stepMm: 0.1 } })
    expect(owned).toMatchObject({ served: 6, unserved: [{ setup: 5, why: 'no-bar-of-height' }], next: [{ count: 1, gained: 1 }] })
  })

  test('says why nothing serves', () => {
    const vises = [{ id: 'V', jawHeightMm: 45, openingMm: 100 }]
    const part = (betweenJawsMm: number, heightMm: number) => ({ betweenJawsMm, alongJawsMm: 60, heightMm })
    const face = (depthMm: number) => [{ kind: 'face', depthMm }]
    const { unserved, vises: [vise] } = answerCoverage({
      vises, bars: [...pair('A', 35, { thicknessMm: 10 })], advisedOnly: true, ways: ['on edge'],
      setups: [
        // 45 + 6 + 1 − 19 = 33 to 35; between 14 mm two bars of 10 do not go
        { part: part(38, 19), cuts: face(6) }, { part: part(14, 19), cuts: face(6) },
        // grip 10 of 12, 1 clear, 2 off the top: nothing is left
        { part: part(38, 12), cuts: face(2) }, { part: part(120, 19), cuts: face(6) },
        // 200 high: above three times the grip from 45 − 200/4 < 0 on
        { part: part(38, 200) }, { part: part(38, 60), cuts: face(40), times: 4 },
      ],
    })
    expect(unserved).toEqual([
      { setup: 1, why: 'bars-too-thick' }, { setup: 2, why: 'no-height-serves' }, { setup: 3, why: 'wider-than-vises' }, { setup: 4, why: 'only-above-advice' }, { setup: 5, why: 'no-bar-of-height' },
    ])
    // 45 + 40 + 1 − 60 = 26 up to the advised 45 − 60 / 4 = 30, four times
    expect(vise).toMatchObject({ setups: 9, served: 1, gaps: [{ lowMm: 26, highMm: 30, setups: 4 }, { lowMm: 33, highMm: 35, setups: 1 }] })
  })

  test('counts lying flat, two high and the bed only where asked to', () => {
    const bars = [...pair('A', 30, { thicknessMm: 12, thicknessStanding: 'measured' }), ...pair('B', 20, { thicknessMm: 10 })], setups = [{ lowMm: 50, highMm: 50 }, { lowMm: 12, highMm: 12 }, { lowMm: 0, highMm: 5 }]
    const servedBy = (counted: readonly Way[]) => answerCoverage({ setups, bars, ways: counted }).served
    expect([servedBy(['on edge']), servedBy(['on edge', 'stack']), servedBy(['lying flat']), servedBy(['bed']), servedBy([...ways])]).toEqual([0, 1, 1, 1, 3])
  })

  test('a setup for one vise is looked at there alone', () => {
    const vises = [{ id: 'low', jawHeightMm: 30, openingMm: 100 }, { id: 'high', jawHeightMm: 60, openingMm: 100 }], part = { betweenJawsMm: 40, alongJawsMm: 60, heightMm: 20 }, cuts = [{ kind: 'face', depthMm: 5 }]
    // low: 16 to 20; high: 46 to 50
    const { vises: [low, high], served } = answerCoverage({ vises, bars: pair('A', 18), setups: [{ part, cuts, vise: 'high' }, { part, cuts }, { part, cuts, vise: 'low' }] })
    expect({ served, low: [low!.setups, low!.served], high: [high!.setups, high!.served] }).toEqual({ served: 2, low: [2, 2], high: [2, 0] })
  })
})

const bar = fc.record({
  heightMm: fc.integer({ min: 8, max: 60 }).map((half) => half / 2), thicknessMm: fc.constantFrom(3, 5, 8, 12), lengthMm: fc.constant(200), mates: fc.constantFrom('M', 'N', 'O', 'P', undefined),
  trust: fc.constantFrom('trusted', 'look first', 'drill bar', 'in work', 'gone'), standing: fc.constantFrom('measured', 'marked'), thicknessStanding: fc.constantFrom('measured', 'marked'),
})
const rack = fc.array(bar, { maxLength: 14 }).map((list) => list.map((one, k) => ({ id: `B${k}`, ...one })))
const setup = fc.record({
  part: fc.oneof(
    fc.record({ betweenJawsMm: fc.integer({ min: 6, max: 60 }), alongJawsMm: fc.constant(100), heightMm: fc.integer({ min: 6, max: 60 }) }),
    fc.record({ shape: fc.constant('round'), diameterMm: fc.integer({ min: 8, max: 50 }), alongJawsMm: fc.constant(100) }),
  ),
  cuts: fc.array(fc.record({ kind: fc.constant('face'), depthMm: fc.integer({ min: 0, max: 5 }) }), { maxLength: 1 }),
  wishes: fc.record({ gripMm: fc.constantFrom(3, 10, 'auto'), use: fc.constantFrom('drilling', 'milling'), matchUm: fc.constantFrom(600, 10) }),
})
const vise = fc.record({ jawHeightMm: fc.constantFrom(25, 32, 45), openingMm: fc.constantFrom(45, 80) })
const shop = fc.record({ bars: rack, setups: fc.array(setup, { minLength: 1, maxLength: 8 }), vises: fc.array(vise, { minLength: 1, maxLength: 3 }).map((list) => list.map((one, k) => ({ id: `V${k}`, ...one }))), ways: fc.subarray([...ways], { minLength: 1 }) })

describe('coverage', () => {
  test('serves what the main job finds bars for, where there are no holes', () => {
    fc.assert(fc.property(shop, fc.boolean(), (raw, advisedOnly) => {
      const { unserved, vises, setups: all } = answerCoverage({ ...raw, advisedOnly }), missing = new Set(unserved.map((one) => one.setup))
      const servedIn = raw.vises.map(() => 0)
      raw.setups.forEach((one, k) => {
        const found = raw.vises.map((at, v) => {
          const { part } = one, acrossMm = 'diameterMm' in part ? part.diameterMm : part.betweenJawsMm
          if (acrossMm > at.openingMm) return false
          const { question, bars } = readSetupCase({ ...one, vise: at, bars: raw.bars, ways: raw.ways, most: 1, rejectedMost: 0 }), { choices: [best], window } = chooseBars(question, indexRack(bars))
          const serves = best !== undefined && (!advisedOnly || best.seatMm <= window.advisedHighMm + 1e-6)
          if (serves) servedIn[v]! += 1
          return serves
        })
        expect(missing.has(k), JSON.stringify(one)).toBe(!found.includes(true))
      })
      expect(vises.map((one) => one.served)).toEqual(servedIn)
      expect(all).toBe(raw.setups.length)
    }), { numRuns: 70 })
  })

  test('with places looked at serves what the main job finds bars for among holes', () => {
    const hole = fc.record({ kind: fc.constant('hole'), diameterMm: fc.integer({ min: 2, max: 12 }), xMm: fc.integer({ min: 6, max: 54 }), yMm: fc.integer({ min: 2, max: 30 }), through: fc.constant(true) })
    const drilled = fc.record({ part: fc.record({ betweenJawsMm: fc.constant(32), alongJawsMm: fc.constant(60), heightMm: fc.integer({ min: 15, max: 40 }) }), cuts: fc.array(hole, { minLength: 1, maxLength: 3 }) })
    const at = { id: 'V', jawHeightMm: 32, openingMm: 80 }
    let refused = 0, foul = 0
    fc.assert(fc.property(rack, drilled, bar, (bars, one, more) => {
      const place = ['on edge', 'single'], { question, bars: read } = readSetupCase({ ...one, vise: at, bars, ways: place, most: 1, rejectedMost: 0 }), { choices: [best] } = chooseBars(question, indexRack(read))
      const given = answerCoverage({ vises: [at], setups: [one], bars, ways: place, advisedOnly: false, places: true })
      expect(given.served, JSON.stringify(one)).toBe(best === undefined ? 0 : 1)
      expect(answerCoverage({ vises: [at], setups: [one], bars: [...bars, { id: 'new', ...more }], ways: place, advisedOnly: false, places: true }).served).toBeGreaterThanOrEqual(given.served)
      if (best === undefined) refused += 1
      if (given.unserved[0]?.why === 'no-place') foul += 1
    }), { numRuns: 150 })
    expect(refused).toBeGreaterThan(5)
    expect(foul).toBeGreaterThan(2)
  })

  test('never falls when a bar is added', () => {
    fc.assert(fc.property(shop, bar, (raw, more) => {
      const before = answerCoverage(raw), after = answerCoverage({ ...raw, bars: [...raw.bars, { id: 'new', ...more }] })
      expect(after.served).toBeGreaterThanOrEqual(before.served)
      after.vises.forEach((one, k) => expect(one.served).toBeGreaterThanOrEqual(before.vises[k]!.served))
    }), { numRuns: 100 })
  })

  test('gains what it says once the next heights are owned, and no other one gains more', () => {
    fc.assert(fc.property(shop, fc.constantFrom(4, 9, null), (raw, thicknessMm) => {
      const question = { ...raw, ways: ['on edge', 'single'], next: { stepMm: 1, lowestMm: 1, thicknessMm, most: 2 } }, { served, next } = answerCoverage(question)
      const withHeights = (heights: readonly number[]) => answerCoverage({ ...question, bars: [...raw.bars, ...heights.flatMap((height) => pair(`new${height}`, height, { thicknessMm: thicknessMm ?? 0.01 }))] }).served
      for (const { heightsMm, rangesMm, gained, count, status } of next) {
        expect([heightsMm.length, status]).toEqual([count, 'optimal'])
        expect(withHeights(heightsMm)).toBe(served + gained)
        for (const end of [0, 1] as const) expect(withHeights(rangesMm.map((range) => Math.max(0.001, range[end])))).toBeGreaterThanOrEqual(served + gained)
      }
      // one height at a time, each that could be had
      const most = Math.max(...Array.from({ length: 50 }, (_, k) => withHeights([k + 1])))
      expect(served + (next[0]?.gained ?? 0)).toBe(most)
    }), { numRuns: 12 })
  })

  test('a gap holds as many setups as a bar in it would serve', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 12 }), fc.integer({ min: 1, max: 3 })), { maxLength: 8 }), fc.integer({ min: 0, max: 110 }), (list, halves) => {
      const setups = list.map(([low, width, times]) => ({ lowMm: low / 10, highMm: (low + width) / 10, times })), heightMm = halves / 20
      const { gaps } = answerCoverage({ setups, bars: [], ways: ['on edge'] }), counted = setups.reduce((sum, one) => sum + (heightMm >= one.lowMm - 1e-9 && heightMm <= one.highMm + 1e-9 ? one.times : 0), 0)
      const said = gaps.filter(({ lowMm, highMm }) => heightMm >= lowMm - 1e-9 && heightMm <= highMm + 1e-9).map((gap) => gap.setups)
      expect(Math.max(0, ...said)).toBe(counted)
    }))
  })

  test('the best few candidates are the best of all', () => {
    const asked = fc.record({ serves: fc.array(fc.uniqueArray(fc.integer({ min: 0, max: 11 }), { maxLength: 6 }), { maxLength: 9 }), times: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 12, maxLength: 12 }) })
    fc.assert(fc.property(asked, fc.integer({ min: 1, max: 3 }), ({ serves, times }, count) => {
      const gainOf = (set: readonly number[]) => [...new Set(set.flatMap((k) => serves[k]!))].reduce((sum, one) => sum + times[one]!, 0)
      const { chosen, gained, bound } = bestHeights({ serves, times }, count)
      let most = 0
      for (let set = 0; set < 2 ** serves.length; set += 1) {
        const taken = [...serves.keys()].filter((k) => (set >> k) % 2 === 1)
        if (taken.length <= count) most = Math.max(most, gainOf(taken))
      }
      expect([gained, bound, gainOf(chosen)]).toEqual([most, most, most])
      expect(chosen.length).toBeLessThanOrEqual(count)
    }), { numRuns: 100 })
  })

  test('what cannot be is refused, naming the setup', () => {
    const refused = (raw: unknown) => {
      try { return answerCoverage(raw).ignored } catch (error) { if (error instanceof Refusal) return [error.code, error.facts.field]; throw error }
    }
    const vises = [{ id: 'V', jawHeightMm: 45, openingMm: 100 }], part = { betweenJawsMm: 38, alongJawsMm: 60, heightMm: 19 }, bars: readonly Bar[] = []
    expect(refused({ vises, bars, setups: [{ part, colour: 1 }] })).toEqual(['setups[0].colour'])
    expect(refused({ vises, bars, setups: [{ lowMm: 3 }] })).toEqual(['field-missing', 'setups[0].highMm'])
    expect(refused({ vises, bars, setups: [{}] })).toEqual(['field-missing', 'setups[0].part'])
    expect(refused({ vises, bars, setups: [{ part }], ways: ['upright'] })).toEqual(['unknown-word', 'ways[0]'])
    expect(refused({ vises: [{ ...vises[0], openingMm: 0 }], bars, setups: [] })).toEqual(['size-not-positive', 'vises[0].openingMm'])
    expect(refused({ vises: [...vises, ...vises], bars, setups: [] })).toEqual(['id-used-twice', 'vises[1].id'])
    expect(refused({ vises, bars: [...pair('A', 10), ...pair('A', 10)], setups: [] })).toEqual(['bar-id-twice', 'bars[2].id'])
    expect(refused({ vises, bars, setups: [{ part, vise: 'W' }] })).toEqual(['unknown-vise', 'setups[0].vise'])
    expect(refused({ vises, bars, setups: [{ part }, { part: { ...part, heightMm: -1 } }] })).toEqual(['size-not-positive', 'setups[1].part.heightMm'])
    expect(refused({ vises, bars, setups: [{ part, cuts: [{ kind: 'face', depthMm: 20 }] }] })).toEqual(['cut-deeper-than-part', 'setups[0].cuts[0].depthMm'])
    expect(refused({ vises, bars, setups: [{ lowMm: 44, highMm: 45 }], next: { stepMm: 1e-3 } })).toEqual(['too-many', 'next.stepMm'])
    expect(answerCoverage({ bars, setups: [] })).toMatchObject({ setups: 0, share: null, next: [] })
  })
})
