import { describe, expect, test } from 'vitest'
import type { Grind } from '#engine/make/grind/grinding-job.ts'
import type { Sum } from '#model/sum.ts'
import { calc } from '#tasks/calc.ts'
import { cautionsFor } from '#words/cautions.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { saySum } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'

const pair = { bars: 2, thicknessMm: 10, heightMm: 30, lengthMm: 150, bowMm: 0.12 }
const grind = (raw: object): Grind & { readonly sum: readonly Sum[] } => calc('grind', { ...pair, ...raw }) as Grind & { readonly sum: readonly Sum[] }

describe('grind by the books', () => {
  // Machinery's Handbook, 31st edition, page 1329: tool steel, hardened, 0.002 in in roughing, 0.0005 in in finishing.
  test('an infeed above the handbook is told; a tenth of the wheel for each stroke, 15 m/min', () => {
    const { findings } = grind({ stages: [{ infeedUm: 55 }, { infeedUm: 14, takesUm: 28 }] })
    expect(findings.filter(({ code }) => code === 'infeed-large').map(({ facts }) => facts.mostUm)).toEqual([50, 13])
    expect(grind({ wheel: { widthMm: 20 } }).sum.at(-1)!.inputs).toMatchObject({ crossfeedMm: 2, tableMPerMin: 15 })
  })

  test('everything it answers can be said', () => {
    const cases = [{ allowanceMm: 0.3, growthPercent: 0.15 }, { allowanceMm: 0.1, sides: 'faces', bowMm: 0.01, stages: [{ infeedUm: 60 }], wheel: { widthMm: 20, diameterMm: 178, rpm: 1500 } }, { work: 'plain carbon', hardened: false, bars: 1, growthPercent: -0.05 }]
    for (const raw of cases) {
      const { order, findings, sum, cautions } = grind(raw)
      const said = [...[...order, ...findings].map((one) => sayFinding(one, plainUnits)), ...sum.map((one) => saySum(one, plainUnits)).flatMap(({ title, inWords, worked }) => [title, inWords, worked])]
      expect(said.filter((text) => /\?|undefined|NaN|null|Note:|\{|\}/.test(text))).toEqual([])
      expect(cautionsFor(new Set(cautions), plainUnits).length).toBe(cautions.length + 1)
    }
    expect(sayRefusal({ code: 'wheel-above-marked', facts: { field: 'wheel.rpm', given: 3601, needed: { most: 3600 } } }, plainUnits)).toBe('Wheel, spindle speed: 3601 1/min is above what is marked on the wheel; it must be at most 3600.')
  })
})
