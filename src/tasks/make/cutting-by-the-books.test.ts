// Guides to cutters as public copies state them; a fact of the trade without a source is marked so.
import { describe, expect, test } from 'vitest'
import type { Cutting } from '#engine/make/cutting/cutting.ts'
import { millingForce } from '#engine/setup/hold/cutting-forces.ts'
import type { Sum } from '#model/sum.ts'
import { calc } from '#tasks/calc.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { saySum } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'

type Answer = Cutting & { readonly sum: readonly Sum[]; readonly force: { readonly kc11MPa: number; readonly mc: number } } & { readonly refused?: string; readonly facts?: { readonly [name: string]: never } }
const cutting = (raw: object): Answer => (calc('cutting', [raw]) as Answer[])[0]!
const small = { steel: 'S235JRC+C', cutter: { diameterMm: 6, teeth: 4, stickOutMm: 20 }, depthMm: 8, lengthMm: 150, stockMm: 0.6 }

describe('cutting by the books', () => {
  // Guide to solid carbide end mills: 210 to 300 m/min in mild steel. π · 6 · 800 / 1000 = 15.08 m/min (own arithmetic).
  test('a soft pair side-milled with a 6 mm four-flute carbide cutter at 800 1/min is slow, but legal', () => {
    const { findings, rpm, speedMPerMin } = cutting({ ...small, machine: { mostRpm: 800 } })
    expect([rpm, speedMPerMin]).toEqual([800, expect.closeTo(15.08, 2)])
    expect(findings).toContainEqual({ code: 'speed-slow', facts: { mPerMin: expect.closeTo(15.08, 2) as number, rpm: 800, fromMPerMin: 210, toMPerMin: 300 } })
    expect(sayFinding(findings.find(({ code }) => code === 'speed-slow')!, plainUnits)).toBe('15.08 m/min is slow (usual are 210 to 300): legal, the edge lasts, it only takes longer. Keep the feed per tooth; slower feed makes it rub.')
  })

  test('a tenth of the cutter in lets the feed rise by 1 / 0.600', () => {
    const { findings } = cutting({ ...small, finishMm: 0.6, stockMm: 0.6, feedPerToothMm: 0.03 })
    expect(findings).toContainEqual({ code: 'feed-may-rise', facts: { kind: 'finish', share: expect.closeTo(0.1, 9) as number, perFeed: expect.closeTo(0.6, 9) as number, feedFactor: expect.closeTo(1.6667, 4) as number, feedPerToothMm: expect.closeTo(0.05, 9) as number } })
  })

  // 44 HRC in coated carbide on a manual mill: 40 to 80 m/min (a brochure on shoulder milling), 0.05 to 0.15 wide in finishing (common practice, no source).
  test('prehardened plate starts slow, hardened steel slower and in finer passes', () => {
    expect(cutting({ ...small, steel: 'prehardened 44 HRC', cutter: { diameterMm: 10, teeth: 4, stickOutMm: 30 } })).toMatchObject({ speedMPerMin: expect.closeTo(40, 9) as number, feedPerToothMm: 0.02 })
    const hard = cutting({ ...small, steel: '1.2379', state: 'hardened', stockMm: 0.1, cutter: { diameterMm: 10, teeth: 4, stickOutMm: 30 } })
    expect(hard).toMatchObject({ speedMPerMin: expect.closeTo(30, 9) as number, feedPerToothMm: 0.01, cautions: ['sharp edges', 'hard milling'] })
    expect(hard.passes.find(({ kind }) => kind === 'finish')!.widthMm).toBeCloseTo(0.035, 9)
  })

  test('the force is the one that holding the part is judged by', () => {
    const { passes: [first], force, feedPerToothMm } = cutting(small)
    expect(first!.forceN).toBe(millingForce({ kc11MPa: force.kc11MPa, mc: force.mc, depthMm: 8, widthMm: first!.widthMm, diameterMm: 6, teeth: 4, feedPerToothMm, helixDeg: 30 }).forceN)
    expect(calc('hold', { part: { betweenJawsMm: 40, alongJawsMm: 150, heightMm: 30 }, gripMm: 10, stickOutMm: 10, clamp: { forceN: 8000 }, milling: { forceN: first!.forceN, pullN: first!.pullN } })).toMatchObject({ milling: { forceN: first!.forceN } })
  })

  test('everything it answers can be said', () => {
    const cases = [
      small, { ...small, machine: { speedsRpm: [400, 800], powerKw: 0.01, mostFeedMmPerMin: 40 } }, { ...small, steel: '1.2842', state: 'hardened', feedPerToothMm: 0.005 }, { ...small, rpm: 20_000, feedPerToothMm: 0.2, depthMm: 15 },
      { ...small, group: '39', steel: undefined, cutter: { ...small.cutter, material: 'HSS' }, rpm: 300, feedPerToothMm: 0.01, finishMm: 0.05 }, { ...small, machine: { leastRpm: 50_000 } },
    ]
    const met = new Set<string>()
    for (const raw of cases) {
      const { findings, sum } = cutting(raw)
      for (const { code } of findings) met.add(code)
      const said = [...findings.map((one) => sayFinding(one, plainUnits)), ...sum.map((one) => saySum(one, plainUnits)).flatMap(({ title, inWords, worked }) => [title, inWords, worked])]
      expect(said.filter((text) => /\?|undefined|NaN|null|Note:|\{|\}/.test(text))).toEqual([])
    }
    expect([...met].toSorted()).toEqual(['chip-thin', 'cut-deep', 'cutter-bends', 'cutter-sheet-first', 'exponent-assumed', 'feed-large', 'feed-limited', 'feed-may-rise', 'feed-small', 'hss-too-soft', 'power-limited', 'speed-fast', 'speed-limited', 'speed-slow', 'speed-too-fast', 'spring-pass-climb'])
    for (const raw of [{ ...small, state: 'hardened' }, { ...small, steel: '1.2842', state: 'hardened', cutter: { ...small.cutter, material: 'HSS' } }]) {
      const { refused, facts } = cutting(raw)
      expect(sayRefusal({ code: refused!, facts: facts! }, plainUnits)).not.toMatch(/\?|undefined|Refused:/)
    }
  })
})
