// Worked examples of textbooks, named beside each check; own arithmetic from formulas and group values is marked so.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerCutting } from '#engine/make/cutting/answer-cutting.ts'
import { chipOf } from '#engine/make/cutting/chip.ts'
import { deflectionOf } from '#engine/make/cutting/deflection.ts'
import { givesWay } from '#engine/make/cutting/gives-way.ts'
import { passWidths } from '#engine/make/cutting/passes.ts'
import { approachMm, feedRate, passMin, powerKw, removalRate, rpmFor, specificForce, speedAt } from '#engine/make/cutting/rates.ts'
import { refusalOf } from '#engine/read/refusal-of.ts'
import { placesOf, spoiled, unsaid } from '#engine/read/spoil.ts'

const cited = { source: 'SHOP', standing: 'shop' } as const
const books = {
  forces: [{ group: '2', what: 'carbon steel', kc11MPa: 1500, mc: 0.22, ...cited }, { group: '39', what: 'hardened', kc11MPa: 4700, mc: null, ...cited }],
  cutters: [{ group: '2', material: 'carbide' as const, fromMPerMin: 200, toMPerMin: 250, feed: { per: 'diameter' as const, from: 0.005, to: 0.01, start: 0.006 }, finishMm: [0.1, 0.2] as const, ...cited }],
  steels: [{ steel: 'C45', state: 'soft' as const, forceGroup: '2', dataGroup: '2', ...cited }],
}
const machine = { leastRpm: 60, mostRpm: 6000, powerKw: 2.2, mostFeedMmPerMin: 2000 }
const edge = { steel: 'C45', cutter: { diameterMm: 12, teeth: 4, stickOutMm: 40 }, depthMm: 16, lengthMm: 150, stockMm: 1, machine }
const answer = (raw: unknown) => answerCutting(raw, books)
const codes = (raw: unknown): string[] => answer(raw).findings.map(({ code }) => code)

describe('worked examples', () => {
  test('a slot 30 wide and 4 deep, 8 teeth, 0.1 a tooth, 120 mm/min, 1000 N/mm², travel 321 (a textbook of machining, chapter on flat surfaces): 150 1/min, 14.13 m/min, 2.68 min, 0.24 and 0.27 kW', () => {
    const rpm = 150, cutterKw = powerKw(removalRate(4, 30, 120), 1000)
    expect(feedRate(rpm, 8, 0.1)).toBeCloseTo(120, 9)
    expect(speedAt(rpm, 30)).toBeCloseTo(14.13, 1)
    expect(passMin(321, 120)).toBeCloseTo(2.68, 1)
    expect([cutterKw, cutterKw / 0.9]).toEqual([expect.closeTo(0.24, 6), expect.closeTo(0.267, 3)])
  })

  test('slab milling, 75 mm, 10 teeth, 60 1/min, 100 mm/min, 5 deep, 20 wide, 1.4 t^−0.4 J/mm³ at a mean chip of 0.043 (a textbook of manufacturing science, examples 4.16 and 4.18): 817 W; at 25 mm/min and 3.3 J/mm³ 138 W', () => {
    // the mean chip of this cutter is what the book says; its power is rounded on the way (821 W exactly)
    expect(chipOf(5, 75, 100 / 600).meanMm).toBeCloseTo(0.043, 3)
    expect(Math.abs((1000 * powerKw(removalRate(20, 5, 100), 1400 * 0.043 ** -0.4)) / 817 - 1)).toBeLessThan(0.006)
    expect(1000 * powerKw(removalRate(20, 5, 25), 3300)).toBeCloseTo(137.5, 6)
  })

  // Problems of peripheral milling as textbooks set them; results own arithmetic.
  test.each([[400, 70, 5, 60, 0.25, 6.5, 50, 272.8, 341, 20.32, 1.232, 110.84], [650, 60, 5, 55, 0.3, 9, 50, 291.8, 437.7, 21.42, 1.534, 196.954], [275, 75, 10, 40, 0.1, 5, 75, 169.8, 169.8, 18.71, 1.73, 63.662]])(
    '%d long, cutter %d', (lengthMm, diameterMm, teeth, mPerMin, feedMm, widthMm, depthMm, rpm, feed, approach, minutes, cm3) => {
      const ourRpm = rpmFor(mPerMin, diameterMm), ourFeed = feedRate(ourRpm, teeth, feedMm), ourApproach = approachMm(widthMm, diameterMm)
      expect([ourRpm, ourFeed]).toEqual([expect.closeTo(rpm, 1), expect.closeTo(feed, 1)])
      expect(ourApproach).toBeCloseTo(approach, 2)
      expect(passMin(lengthMm + ourApproach, ourFeed)).toBeCloseTo(minutes, 2)
      expect(removalRate(depthMm, widthMm, ourFeed)).toBeCloseTo(cm3, 2)
    })

  test('slab milling 300 × 100, 50 mm, 20 teeth, 100 1/min, 0.25, 3 deep, 3 J/mm³ (a textbook of manufacturing, chapter 24, from memory): 7.5 kW, 716 N m, about 37.5 s', () => {
    const feed = feedRate(100, 20, 0.25), kw = powerKw(removalRate(100, 3, feed), 3000)
    expect([kw, (9550 * kw) / 100]).toEqual([expect.closeTo(7.5, 9), expect.closeTo(716.2, 0)])
    expect(Math.abs(60 * passMin(300 + approachMm(3, 50), feed) - 37.5)).toBeLessThan(0.1)
  })

  // Own arithmetic by group values of VDI 3323: mean chip, kc, table feed, power.
  test.each([[{ kc: 1500, mc: 0.22, d: 20, ap: 20, ae: 0.3, fz: 0.08, vc: 100 }, 0.0098, 4152, 509, 0.211], [{ kc: 2450, mc: 0.23, d: 16, ap: 16, ae: 0.2, fz: 0.05, vc: 80 }, 0.0056, 8081, 318, 0.137]])('%o', ({ kc, mc, d, ap, ae, fz, vc }, hm, kcMPa, feed, kw) => {
    const { meanMm } = chipOf(ae, d, fz), ours = specificForce(kc, mc, meanMm), ourFeed = feedRate(rpmFor(vc, d), 4, fz)
    expect(meanMm).toBeCloseTo(hm, 4)
    expect([ours, ourFeed].map(Math.round)).toEqual([kcMPa, feed])
    expect(powerKw(removalRate(ap, ae, ourFeed), ours)).toBeCloseTo(kw, 3)
  })
})

describe('the chip', () => {
  // Exact geometry, own arithmetic: largest and mean chip for each mm of feed, and by how much the feed may rise.
  test.each([[0.02, 0.28, 3.57, 0.141], [0.05, 0.436, 2.29, 0.222], [0.1, 0.6, 1.67, 0.311], [0.15, 0.714, 1.4, 0.377], [0.2, 0.8, 1.25, 0.431], [0.25, 0.866, 1.15, 0.477], [0.3, 0.917, 1.09, 0.518], [0.4, 0.98, 1.02, 0.584], [0.5, 1, 1, 0.637]])(
    'with %d of the cutter in is %d of the feed', (share, perFeed, factor, mean) => {
      const chip = chipOf(20 * share, 20, 1)
      expect([chip.maxMm, chip.feedFactor, chip.meanMm]).toEqual([expect.closeTo(perFeed, 3), expect.closeTo(factor, 2), expect.closeTo(mean, 3)])
    })

  test('a tenth is 0.600, not the 0.436 of a twentieth; the feed may rise by its inverse', () => {
    expect(chipOf(1, 10, 0.05)).toMatchObject({ perFeed: expect.closeTo(0.6, 9) as number, feedFactor: expect.closeTo(1 / 0.6, 9) as number })
    expect(chipOf(0.5, 10, 0.05).perFeed).toBeCloseTo(0.436, 3)
  })

  test('is no thinner the more is in, never thicker than the feed, thicker at its most than in the mean', () => {
    const share = fc.double({ min: 1e-9, max: 1, noNaN: true })
    fc.assert(fc.property(share, share, (one, other) => {
      const [less, more] = [chipOf(10 * Math.min(one, other), 10, 0.1), chipOf(10 * Math.max(one, other), 10, 0.1)]
      expect(more.maxMm).toBeGreaterThanOrEqual(less.maxMm)
      for (const { maxMm, meanMm, feedFactor } of [less, more]) {
        expect(maxMm).toBeLessThanOrEqual(0.1)
        expect(meanMm).toBeLessThanOrEqual(maxMm)
        expect(maxMm * feedFactor).toBeCloseTo(0.1, 12)
      }
    }))
  })
})

describe('the cutter bends', () => {
  // Own arithmetic with d = 0.8 D: 100 N at the tip, L 40, D 10: carbide 17.7 µm, high-speed steel 50.5; 200 N, 60, 20, carbide 7.5.
  test.each([[100, 40, 10, 600_000, 17.7], [100, 40, 10, 210_000, 50.5], [200, 60, 20, 600_000, 7.5]])('%d N on %d out, diameter %d', (forceN, stickOutMm, diameterMm, eMPa, tipUm) => {
    expect(deflectionOf(forceN, { stickOutMm, diameterMm, eMPa }, 10).tipUm).toBeCloseTo(tipUm, 1)
  })

  test("twice the overhang bends 8 times as far, twice the diameter a sixteenth (a training course's examples: 0.2 mm to 1.6 mm, 25 µm to 1.56)", () => {
    const tip = (stickOutMm: number, diameterMm: number) => deflectionOf(100, { stickOutMm, diameterMm, eMPa: 600_000 }, 1).tipUm
    expect(tip(80, 10) / tip(40, 10)).toBeCloseTo(8, 9)
    expect((25 * tip(40, 20)) / tip(40, 10)).toBeCloseTo(1.5625, 9)
  })

  test('most at the tip, less where the cut ends: the wall is out of square by the difference', () => {
    const { tipUm, topUm, taperUm } = deflectionOf(100, { stickOutMm: 40, diameterMm: 10, eMPa: 600_000 }, 15)
    expect(topUm).toBeLessThan(tipUm)
    expect(tipUm - topUm).toBe(taperUm)
    expect(deflectionOf(100, { stickOutMm: 40, diameterMm: 10, eMPa: 600_000 }, 40).topUm).toBe(0)
  })
})

describe('a cutter that gives way', () => {
  const cut = { kc11MPa: 1500, mc: 0.22, depthMm: 16, widthMm: 0.15, diameterMm: 12, teeth: 4, feedPerToothMm: 0.072, helixDeg: 30 }, bends = { stickOutMm: 40, eMPa: 600_000 }

  test('takes what it leaves standing no more, and stands where force and bending agree', () => {
    const { biteMm, bendingN, deflection } = givesWay(cut, bends)
    expect(biteMm + deflection.tipUm / 1000).toBeCloseTo(0.15, 9)
    // stiffness 3 E I / L³ with I of 0.8 D: 11.7 N/µm (own arithmetic)
    expect(bendingN / deflection.tipUm).toBeCloseTo((3 * 600_000 * Math.PI * 9.6 ** 4) / 64 / 40 ** 3 / 1000, 6)
    expect(givesWay(cut, { ...bends, eMPa: 6e9 }).biteMm).toBeCloseTo(0.15, 4)
  })

  // Edges summed up at small steps of turn and height, each at its own chip.
  test('bounds the force of a helical cutter, and by no more than the chips are thinner than the thickest', () => {
    for (const helixDeg of [0, 15, 30, 45]) for (const depthMm of [2, 8, 16, 30]) {
      const perMm = Math.tan((helixDeg * Math.PI) / 180) / 6, arc = Math.acos(1 - (2 * 0.15) / 12)
      let most = 0
      for (let turn = 0; turn < Math.PI / 2; turn += 0.01) {
        let force = 0
        for (let tooth = 0; tooth < 4; tooth += 1) for (let z = 0.05; z < depthMm; z += 0.1) {
          const angle = (((turn + (tooth * Math.PI) / 2 - z * perMm) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)
          if (angle < arc) { const chip = 0.072 * Math.sin(angle); force += 1500 * 0.1 * chip * Math.max(chip, 0.01) ** -0.22 }
        }
        most = Math.max(most, force)
      }
      // on a cutter too stiff to give way, so that it takes all of the width
      const { bendingN } = givesWay({ ...cut, depthMm, helixDeg }, { ...bends, eMPa: 1e15 })
      expect(bendingN, `${helixDeg}° ${depthMm}`).toBeGreaterThanOrEqual(most * 0.98)
      expect(bendingN, `${helixDeg}° ${depthMm}`).toBeLessThan(3 * most)
    }
  })
})

describe('passes', () => {
  test('add to the stock, none wider than told, the finishing pass last', () => {
    const mm = fc.double({ min: 0.001, max: 10, noNaN: true })
    fc.assert(fc.property(mm, mm, mm, (stockMm, roughMm, finishMm) => {
      fc.pre(stockMm / roughMm < 1000)
      const plan = passWidths(stockMm, roughMm, finishMm)
      expect(plan.reduce((sum, { widthMm }) => sum + widthMm, 0)).toBeCloseTo(stockMm, 9)
      for (const { kind, widthMm } of plan) expect(widthMm).toBeLessThanOrEqual((kind === 'rough' ? roughMm : finishMm) * (1 + 1e-6))
      expect(plan.filter(({ kind }) => kind === 'finish')).toEqual([plan.at(-1)])
    }))
    expect(passWidths(1, 0.425, 0.15).map(({ kind, widthMm }) => `${kind} ${widthMm.toFixed(3)}`)).toEqual(['rough 0.425', 'rough 0.425', 'finish 0.150'])
  })

  test('conventional, then a spring pass in climb that takes what bending left, and leaves less', () => {
    const { passes, wall } = answer(edge)
    expect(passes.map(({ kind, direction }) => `${kind} ${direction}`)).toEqual(['rough conventional', 'finish conventional', 'spring climb'])
    expect(passes.at(-1)).toMatchObject({ widthMm: 0, facesMm: expect.closeTo(wall.finishUm / 1000, 12) as number })
    expect(wall.leftUm).toBeLessThan(wall.finishUm)
    // what is taken and what is left add to the stock
    expect(passes.reduce((sum, { biteMm }) => sum + biteMm, 0) + wall.leftUm / 1000).toBeCloseTo(1, 9)
    expect(answer({ ...edge, springPass: false }).wall).toMatchObject({ springUm: null, leftUm: wall.finishUm })
  })
})

describe('within the machine', () => {
  test('runs at the speed for the slow end of the usual range, or at the step of the gearbox below it', () => {
    expect(answer(edge)).toMatchObject({ rpm: expect.closeTo(rpmFor(200, 12), 6) as number, speedMPerMin: expect.closeTo(200, 6) as number, feedPerToothMm: expect.closeTo(0.072, 9) as number })
    const geared = { ...edge, machine: { speedsRpm: [3000, 1500, 750] } }
    expect(answer(geared).rpm).toBe(3000)
    expect(codes(geared)).toEqual(expect.arrayContaining(['speed-limited', 'speed-slow']))
    expect(codes({ ...edge, rpm: 2000, machine: { leastRpm: 3000 } })).toContain('speed-too-fast')
  })

  test('feeds less where table or motor give out, and says so', () => {
    expect(answer({ ...edge, machine: { mostFeedMmPerMin: 500 } })).toMatchObject({ feedMmPerMin: expect.closeTo(500, 6) as number })
    const weak = { ...edge, roughMm: 3, stockMm: 3, machine: { powerKw: 1 } }, { passes, findings, motorKw } = answer(weak)
    expect(motorKw).toBeCloseTo(1, 6)
    expect(passes[0]!.motorKw).toBeLessThanOrEqual(1)
    expect(findings.map(({ code }) => code)).toContain('power-limited')
    expect(codes({ ...weak, machine: { powerKw: 100 } })).not.toContain('power-limited')
  })

  test('more width, depth or feed takes more power and bends more; the more that sticks out, the more is left', () => {
    const size = fc.double({ min: 0.05, max: 3, noNaN: true }), times = fc.double({ min: 1, max: 3, noNaN: true }), free = { ...edge, machine: undefined, springPass: false, feedPerToothMm: 0.06 }
    fc.assert(fc.property(size, times, fc.constantFrom('stockMm', 'depthMm', 'feedPerToothMm'), (stockMm, factor, key) => {
      const less = { ...free, stockMm, roughMm: 12, finishMm: 12 }, more = { ...less, [key]: less[key as 'stockMm'] * factor }
      expect(answer(more).motorKw).toBeGreaterThanOrEqual(answer(less).motorKw * (1 - 1e-12))
      expect(answer(more).wall.finishUm).toBeGreaterThanOrEqual(answer(less).wall.finishUm * (1 - 1e-12))
      expect(answer({ ...less, cutter: { ...edge.cutter, stickOutMm: 40 * factor } }).wall.leftUm).toBeGreaterThanOrEqual(answer(less).wall.leftUm)
    }))
  })

  test('a chip below 0.01 mm is told, and its force taken as at 0.01', () => {
    const thin = { ...edge, feedPerToothMm: 0.02, finishMm: 0.1, stockMm: 0.1, springPass: false }
    expect(answer(thin).findings).toContainEqual({ code: 'chip-thin', facts: { kind: 'finish', chipMm: expect.closeTo(0.02 * 2 * Math.sqrt((0.1 / 12) * (1 - 0.1 / 12)), 9) as number, leastMm: 0.01 } })
    expect(answer(thin).passes[0]!.kcMPa).toBeCloseTo(1500 * 0.01 ** -0.22, 6)
    expect(codes(edge)).not.toContain('chip-thin')
  })
})

describe('the calculation cutting', () => {
  test('takes a force of one\'s own, and asks for what no book has', () => {
    const own = { ...edge, steel: undefined, kc11MPa: 1800, mc: 0.2, speedMPerMin: 90, feedPerToothMm: 0.05, finishMm: 0.1 }
    expect(answer(own)).toMatchObject({ force: { kc11MPa: 1800, mc: 0.2, source: 'SHOP', standing: 'shop' }, speedMPerMin: expect.closeTo(90, 9) as number, ignored: [] })
    expect(refusalOf(answer, { ...own, feedPerToothMm: undefined })).toBe('no-cutting-data feedPerToothMm')
    expect(codes({ ...own, kc11MPa: undefined, mc: undefined, group: '39' })).toEqual(expect.arrayContaining(['exponent-assumed']))
  })

  test('refuses what cannot be', () => {
    const refused = (more: object) => refusalOf(answer, { ...edge, ...more })
    expect(refused({ steel: undefined })).toBe('field-missing steel')
    expect(refused({ steel: 'gold' })).toBe('unknown-word steel')
    expect(refused({ state: 'hardened' })).toBe('steel-state-unknown state')
    expect(refused({ roughMm: 13 })).toBe('cut-wider-than-cutter roughMm')
    expect(refused({ roughMm: 1e-5 })).toBe('too-many roughMm')
    expect(refused({ cutter: { ...edge.cutter, teeth: 0 } })).toBe('size-not-positive cutter.teeth')
    expect(refused({ machine: { efficiency: 2 } })).toBe('value-not-allowed machine.efficiency')
    expect(refused({ machine: { speedsRpm: [] } })).toBe('value-not-allowed machine.speedsRpm')
    expect(refused({ machine: { leastRpm: 500, mostRpm: 100 } })).toBe('value-not-allowed machine.leastRpm')
  })

  test('whatever one place of a case is spoiled with, it is answered or refused', () => {
    const whole = { ...edge, state: 'soft', roughMm: 0.5, finishMm: 0.1, overrunMm: 2, speedMPerMin: 100, feedPerToothMm: 0.05, springPass: true, machine: { ...machine, efficiency: 0.8, speedsRpm: [500, 1000] } }
    const places = placesOf(whole), bad = fc.oneof(fc.constantFrom<unknown>(undefined, null, true, 'x', '', NaN, Infinity, 0, -1, 1e-300, 1e-5, 1e6, 1e308, [], {}, [1, 2, 3]), fc.double())
    fc.assert(fc.property(fc.constantFrom(...places), bad, (path, value) => {
      try { expect(unsaid(answer(spoiled(whole, path, value)))).toEqual([]) } catch (error) { if (!(error instanceof Refusal)) throw error; expect(unsaid(error.facts)).toEqual([]) }
    }), { numRuns: 800 })
  })
})
