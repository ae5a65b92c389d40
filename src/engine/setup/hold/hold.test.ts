// Worked examples of textbooks and handbooks, named beside each check; own arithmetic is marked so.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Refusal } from '#model/refusal.ts'
import { answerHold } from '#engine/setup/hold/answer-hold.ts'
import { clampForceN } from '#engine/setup/hold/clamp-force.ts'
import { drillingForce, millingForce } from '#engine/setup/hold/cutting-forces.ts'
import { frictionAt } from '#engine/setup/hold/friction.ts'
import { beamOf, bowOf, compressionOf, onEdgeOf } from '#engine/setup/hold/strength.ts'

type Strength = { readonly id: string; readonly kind: string; readonly input: { readonly [key: string]: number }; readonly expect: { readonly [key: string]: number } }
const { cases, published } = JSON.parse(readFileSync('fixtures/shop/strength/strength.json', 'utf8')) as { cases: Strength[]; published: { what: string; inputs: { [key: string]: number }; printed: number }[] }
const ofKind = (kind: string) => cases.filter((one) => one.kind === kind).map((one) => [one.id, one] as const)

// Computed independently; the head of the file names the formulas and the examples they were held against.
describe('strength', () => {
  const near = (given: number, expected: number) => expect(Math.abs(given / expected - 1)).toBeLessThan(1e-9)

  test('has all its cases', () => expect(['bar-on-edge', 'bar-compression', 'simple-beam'].map((kind) => ofKind(kind).length)).toEqual([6, 6, 4]))

  test.each(ofKind('bar-on-edge'))('%s: a bar on edge', (_, { input, expect: expected }) => {
    const bar = onEdgeOf(input as unknown as Parameters<typeof onEdgeOf>[0])
    near(bar.hingedNPerMm, expected.bothEndsHingedNPerMm!)
    near(bar.heldNPerMm, expected.bothEndsFlatNoSwayNPerMm!)
    near(bar.freeTopNPerMm, expected.bottomFlatTopFreeNPerMm!)
    near(bar.yieldNPerMm, expected.yieldNPerMm!)
    near(bar.tipsAtMm, expected.tipsAtEccentricityMm!)
    near(bar.liftsAtMm, expected.liftsOffAtEccentricityMm!)
  })

  test.each(ofKind('bar-compression'))('%s: a bar pressed', (_, { input, expect: expected }) => {
    const block = compressionOf(input as unknown as Parameters<typeof compressionOf>[0])
    near(block.shorteningUm, expected.shorteningUm!)
    near(block.stressMPa, expected.stressMPa!)
    near(block.stiffnessNPerUm, expected.stiffnessNPerUm!)
  })

  test.each(ofKind('simple-beam'))('%s: a beam on two supports', (_, { input, expect: expected }) => {
    const beam = beamOf(input as unknown as Parameters<typeof beamOf>[0])
    near(beam.midDeflectionUm, expected.midDeflectionUm!)
    near(beam.midStressMPa, expected.midStressMPa!)
  })

  test('a strut pressed beside its middle line bows by 0.112 in (Mechanics of Materials, Gere, problem 11.5-1: 30 in long, 2 × 1 in, E 10⁷ psi, 2800 lb at 0.5 in)', () => {
    const givesWayN = (Math.PI ** 2 * 10e6 * (2 / 12)) / 30 ** 2
    expect(bowOf({ besideMm: 0.5, forceN: 2800, givesWayN })!.midDeflectionUm / 1000).toBeCloseTo(0.112, 3)
    // A small force bows it as two end moments do, F e L² / (8 E I) (textbooks, the same); from the force on under which it gives way there is no figure.
    expect(bowOf({ besideMm: 0.5, forceN: 1, givesWayN })!.midDeflectionUm / 1000 / ((0.5 * 30 ** 2) / (8 * 10e6 * (2 / 12)))).toBeCloseTo(1, 3)
    expect(bowOf({ besideMm: 0.5, forceN: givesWayN, givesWayN })).toBeNull()
  })

  test('a shortening printed in a textbook', () => {
    const example = published.filter(({ what }) => what === 'shortening mm')
    expect(example).toHaveLength(2)
    for (const { inputs, printed } of example) expect(compressionOf({ thicknessMm: inputs.aMm2!, lengthMm: 1, heightMm: inputs.lMm!, forceN: inputs.forceN ?? inputs.fN!, eMPa: inputs.eMPa! }).shorteningUm / 1000).toBeCloseTo(printed, 6)
  })
})

describe('clamp force', () => {
  test('of two screws worked in a textbook of machine design (examples 6.9 and 6.6)', () => {
    const square = { diameterMm: 22, pitchMm: 5, flankDeg: 0, friction: 0.15, collarRadiusMm: 15, collarFriction: 0.15 }
    expect(clampForceN(3.402198556, { leadMm: 5, thread: square, efficiency: 1 })).toBeCloseTo(750, 4)
    // 52 × 8, collar 100/60 with 0.12: efficiency 12.937099 % = F · lead / (2 π M)
    const forceN = clampForceN(1, { leadMm: 8, thread: { diameterMm: 52, pitchMm: 8, flankDeg: 15, friction: 0.15, collarRadiusMm: 40, collarFriction: 0.12 }, efficiency: 1 })
    expect((forceN * 8) / (2 * Math.PI * 1000)).toBeCloseTo(0.12937099, 7)
  })

  test('of a vise screw, own arithmetic: 60 N m on 20 × 4 gives 15.6 kN on a plain collar, 33.0 on rollers', () => {
    const thread = { diameterMm: 20, pitchMm: 4, flankDeg: 15, friction: 0.15, collarRadiusMm: 12, collarFriction: 0.15 }
    expect(clampForceN(60, { leadMm: 4, thread, efficiency: 1 }) / 1000).toBeCloseTo(15.6, 1)
    expect(clampForceN(60, { leadMm: 4, thread: { ...thread, friction: 0.1, collarFriction: 0.02 }, efficiency: 1 }) / 1000).toBeCloseTo(33, 1)
  })
})

describe('cutting forces', () => {
  // Own arithmetic from group values of VDI 3323: peak tooth forces 1388 and 1226 N.
  test.each([
    [{ kc11MPa: 1500, mc: 0.22, depthMm: 20, widthMm: 0.3, diameterMm: 20, teeth: 4, feedPerToothMm: 0.08, helixDeg: 0 }, 1388],
    [{ kc11MPa: 2450, mc: 0.23, depthMm: 16, widthMm: 0.2, diameterMm: 16, teeth: 4, feedPerToothMm: 0.05, helixDeg: 0 }, 1226],
  ])('%o', (cut, toothN) => {
    expect(Math.round(millingForce(cut).toothN)).toBe(toothN)
    expect(millingForce(cut)).toMatchObject({ teethInCut: 1, pullN: 0 })
  })

  test('hmax/fz by radial cut, exact geometry: 0.05 → 0.436, 0.10 → 0.600, 0.30 → 0.917, 0.50 and more → 1', () => {
    const chip = (part: number) => millingForce({ kc11MPa: 1500, mc: 0.22, depthMm: 1, widthMm: 10 * part, diameterMm: 10, teeth: 4, feedPerToothMm: 1, helixDeg: 0 }).chipMm
    expect([0.05, 0.1, 0.3, 0.5, 0.8].map((part) => Math.round(chip(part) * 1000) / 1000)).toEqual([0.436, 0.6, 0.917, 1, 1])
  })

  test('a helix of 45 degrees pulls as much as it cuts; four teeth in a full slot are two at a time', () => {
    expect(millingForce({ kc11MPa: 1500, mc: 0.22, depthMm: 1, widthMm: 10, diameterMm: 10, teeth: 4, feedPerToothMm: 0.1, helixDeg: 45 })).toMatchObject({ teethInCut: 2, pullN: expect.closeTo(2 * 1500 * 0.1 ** 0.78, 6) as number })
  })

  test("a 7/8 in drill at 0.008 in in steel of 200 HB (Machinery's Handbook, 31st edition; result from memory): 2313 lb, 559 in lb", () => {
    const { thrustN, torqueNm } = drillingForce({ diameterMm: 22.225, feedMm: 0.2032, kd: 24_000, wear: 1.3, splitPoint: false })
    // 10 288 N and 63.1 N m; the two unit forms of the handbook agree to a percent
    expect(Math.abs(thrustN / 10_288 - 1)).toBeLessThan(0.015)
    expect(Math.abs(torqueNm / 63.1 - 1)).toBeLessThan(0.02)
  })

  // Factors as printed in the handbook's tables, SI.
  test.each([[3.2, 2.54, 8.12], [8, 5.28, 42.22], [12.5, 7.54, 94.28], [16, 9.19, 147]])('a drill of %d has the factors %d and %d', (diameterMm, ft, fm) => {
    const at = drillingForce({ diameterMm, feedMm: 1, kd: 1, wear: 1, splitPoint: true })
    expect(at.torqueNm / 0.000_025 / fm).toBeCloseTo(1, 2)
    expect((at.thrustN - 0.007 * diameterMm ** 2 * 0.001) / (0.05 * 1.1) / ft).toBeCloseTo(1, 2)
  })
})

describe('the calculation hold', () => {
  const part = { betweenJawsMm: 60, alongJawsMm: 100, heightMm: 40 }, plain = { part, gripMm: 10, stickOutMm: 20, clamp: { forceN: 11_428.571_428_571_43 }, factors: { milling: 2 }, milling: { forceN: 800 } }

  test('slips as the rule says: 800 N with factor 2 needs 11.4 kN at 0.07, 8.0 at 0.10, 5.3 at 0.15, 4.0 at 0.20 (own arithmetic)', () => {
    for (const [friction, forceN] of [[0.07, 11_428.571], [0.1, 8000], [0.15, 5333.333], [0.2, 4000]] as const) {
      expect(answerHold({ ...plain, friction, clamp: { forceN } }).limits[0]).toMatchObject({ limit: 'slip', ratio: expect.closeTo(1, 5) as number })
    }
    expect(answerHold(plain)).toMatchObject({ friction: 0.07, limits: [{ limit: 'slip', ratio: expect.closeTo(1, 9) as number }, { limit: 'tipping' }, { limit: 'part-buckles' }] })
  })

  test('tips as the rule says, and what holds against lifting does not hold against tipping', () => {
    // F (stick-out + g/2) S = 800 · 25 · 2 = 40 N m; F (g/3 + µW) = 11 428.57 · (3.333 + 4.2) = 86.1 N m (own arithmetic)
    const { limits } = answerHold(plain)
    expect(limits[1]).toMatchObject({ limit: 'tipping', needed: 40, has: expect.closeTo(86.095, 3) as number })
    // pulled up with 400 N times 2 of the 1600 N there are: half the friction is left, 11 428.57 · (3.333 + 2.1) = 62.1
    expect(answerHold({ ...plain, milling: { forceN: 800, pullN: 400 } }).limits.find(({ limit }) => limit === 'tipping')).toMatchObject({ has: expect.closeTo(62.095, 3) as number })
  })

  test('names the nearest limit, what is short, what the torque may be, and what was not looked at', () => {
    const answer = answerHold({ part, gripMm: 10, stickOutMm: 20, clamp: { torqueNm: 20, leadMm: 4 }, milling: { forceN: 800 }, drilling: { thrustN: 2000, torqueNm: 15, betweenBarsMm: 44 }, yieldMPa: 350 })
    // 2 π · 0.2 · 20 000 / 4 = 6283 N; slip 2 · 0.07 · 6283 / (3 · 800) = 0.367 (own arithmetic)
    expect(answer.clampN).toBeCloseTo(6283.19, 2)
    expect(answer.least).toMatchObject({ limit: 'slip', ratio: expect.closeTo(0.3665, 3) as number })
    expect(answer.limits.map(({ limit }) => limit)).toEqual(['slip', 'tipping', 'drill-torque', 'part-buckles', 'part-bends', 'jaw-pressure'])
    expect(answer.pressureMPa).toBeCloseTo(6.28319, 4)
    // a beam 44 wide and 40 deep over 44: F S³ / (48 E I)
    expect(answer.bendsUm).toBeCloseTo((1000 * 2000 * 44 ** 3) / (48 * 210_000 * ((44 * 40 ** 3) / 12)), 9)
    expect(answer.findings.map(({ code }) => code)).toEqual(['hold-least', ...answer.limits.filter(({ ratio }) => ratio < 1).map(() => 'hold-short'), 'clamp-estimated', 'hold-not-computed'])
    expect(answer.findings.at(-1)!.facts).toEqual({ what: ['overhang', 'chatter', 'breaking-through', 'thin-walls', 'castings'] })
  })

  test('a thin part gripped low bows up, against its tolerance; gripped over its whole height it does not', () => {
    const plate = { part: { betweenJawsMm: 60, alongJawsMm: 60, heightMm: 8 }, gripMm: 4, stickOutMm: 4, clamp: { forceN: 18_850 } }
    // F e L² (1 − ν²) / (8 E I), e = 2, I = 60 · 8³ / 12: 28.7 µm; the bow itself adds a few per cent (own arithmetic)
    const { bowsUm, limits, findings } = answerHold({ ...plate, toleranceUm: 20 })
    expect(bowsUm! / 28.7).toBeGreaterThan(1)
    expect(bowsUm! / 28.7).toBeLessThan(1.1)
    expect(limits.find(({ limit }) => limit === 'part-bows')).toMatchObject({ has: 20, needed: bowsUm })
    expect(findings.map(({ code }) => code)).toContain('bows-by')
    expect(answerHold(plate).limits.map(({ limit }) => limit)).toEqual(['part-buckles'])
    expect(answerHold({ ...plate, gripMm: 8, stickOutMm: 0 }).bowsUm).toBe(0)
    // 2 mm give way under π² E t³ / (12 (1 − ν²) W²) · 60 = 25.3 kN (own arithmetic), and no bow is told then
    expect(answerHold({ ...plate, part: { ...plate.part, heightMm: 2 }, gripMm: 1, clamp: { forceN: 25_400 } })).toMatchObject({ bowsUm: null, least: { limit: 'part-buckles' } })
  })

  test('says that nobody judged whether the part yields while its yield is not given', () => {
    expect(answerHold(plain).notComputed).toContain('yielding')
    expect(answerHold({ ...plain, yieldMPa: 350 }).notComputed).not.toContain('yielding')
  })

  test('counts thrust only where nothing is below', () => {
    const drilling = { thrustN: 2000, torqueNm: 5 }, at = (carried: boolean) => answerHold({ part, gripMm: 10, stickOutMm: 20, clamp: { forceN: 20_000 }, drilling: { ...drilling, carried } }).limits
    expect(at(true).map(({ limit }) => limit)).not.toContain('drill-thrust')
    // 2 · 0.07 · 20 000 / (2 · 2000) = 0.7
    expect(at(false).find(({ limit }) => limit === 'drill-thrust')!.ratio).toBeCloseTo(0.7, 9)
  })

  test('does not compute what touches along a line, and says so', () => {
    for (const more of [{ contact: 'line' }, { part: { ...part, shape: 'round' } }]) {
      expect(answerHold({ ...plain, ...more })).toMatchObject({ limits: [], least: null, notComputed: ['line-contact', 'overhang', 'chatter', 'breaking-through', 'thin-walls', 'castings'], findings: [{ code: 'line-contact' }, { code: 'hold-not-computed' }] })
    }
  })

  // Clamping coefficients as a rule for calculating chucks prints them; wet smooth jaws as ground (common practice, no source).
  test('friction', () => {
    expect([frictionAt('smooth', 'ground', 'steel', true), frictionAt('serrated', 'unmachined', 'steel', true), frictionAt('diamond', 'machined', 'steel', false)]).toEqual([0.07, 0.45, 0.2])
    expect(frictionAt('diamond', 'machined', 'cast iron', false)).toBeCloseTo(0.16, 12)
    expect([frictionAt('smooth', 'machined', 'steel', true), frictionAt('smooth', 'machined', 'steel', false)]).toEqual([0.07, 0.1])
  })

  test('refuses what cannot be, in order', () => {
    const codeOf = (raw: unknown): string => {
      try { return JSON.stringify(answerHold(raw).least) } catch (error) { if (error instanceof Refusal) return error.code; throw error }
    }
    expect(codeOf({ ...plain, clamp: undefined })).toBe('field-missing')
    expect(codeOf({ ...plain, clamp: {} })).toBe('field-missing')
    expect(codeOf({ ...plain, gripMm: 'deep' })).toBe('not-a-number')
    expect(codeOf({ ...plain, face: 'rubber' })).toBe('unknown-word')
    expect(codeOf({ ...plain, gripMm: 0 })).toBe('size-not-positive')
    expect(codeOf({ ...plain, friction: 7 })).toBe('too-large')
    expect(codeOf({ ...plain, clamp: { torqueNm: 60, leadMm: 5, efficiency: 20 } })).toBe('too-large')
    expect(codeOf({ ...plain, milling: { forceN: -1 } })).toBe('force-negative')
    const cut = { kc11MPa: 1500, mc: 0.22, depthMm: 1, widthMm: 12, diameterMm: 10, teeth: 4, feedPerToothMm: 0.1 }
    expect(codeOf({ ...plain, milling: cut })).toBe('cut-wider-than-cutter')
    expect(codeOf({ ...plain, milling: { ...cut, helixDeg: 90 } })).toBe('angle-too-steep')
    expect(codeOf({ part, gripMm: 10, stickOutMm: 5, clamp: { forceN: 5000 } })).toContain('part-buckles')
  })
})
