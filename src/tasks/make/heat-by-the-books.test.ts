// Data sheets of steels, as public copies state them; each named beside its check.
import { describe, expect, test } from 'vitest'
import type { Heat } from '#engine/make/heat/heat.ts'
import type { Sum } from '#model/sum.ts'
import { calc } from '#tasks/calc.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { saySum } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'

const bar = { thicknessMm: 8, heightMm: 45, lengthMm: 150 }
type Answer = Heat & { readonly sum: readonly Sum[] } & { readonly refused?: string; readonly facts?: { readonly [name: string]: never } }
const heat = (raw: object): Answer => (calc('heat', [{ ...bar, ...raw }]) as Answer[])[0]!

describe('heat by the books', () => {
  test('67 HRC asked of 1.2379 is refused with what was asked, the highest that is published and where', () => {
    // 1.2379: tempering table up to 62/61; obtainable 63 to 65 as quenched.
    const { refused, facts } = heat({ steel: '1.2379', hrc: 67 })
    expect({ refused, facts }).toMatchObject({ refused: 'hardness-outside-table', facts: { given: 67, needed: { least: 55, most: 62 }, steel: '1.2379', source: 'STEEL-12379-C', standing: 'published', asQuenchedHrc: 65 } })
    expect(sayRefusal({ code: refused!, facts: facts! }, plainUnits)).toBe('Hardness: 67 HRC asked of 1.2379; after a temper at least 55 and at most 62 is published (STEEL-12379-C), as quenched up to 65. Ask for less, take another steel, or bring rows of your own.')
  })

  test('67 HRC read on 1.2379 is taken, with a finding; 67 HRC is 900 HV (ASTM E140 type)', () => {
    const { findings, indication } = heat({ steel: '1.2379', measuredHrc: 67 })
    expect(findings[0]).toMatchObject({ code: 'measured-above-published', facts: { measuredHrc: 67, fromHrc: 63, toHrc: 65 } })
    expect(indication).toMatchObject({ hv: 900, rmMPa: null })
  })

  // Data page of 1.2842: 200 °C 62/61, 250 °C 60/59.
  test('1.2842 to 60.5 HRC: 225 °C, oil, 10 minutes at 790 to 820 °C for 8 mm', () => {
    const { temper, steps } = heat({ steel: '1.2842', hrc: 60.5 })
    expect(temper).toMatchObject({ atC: 225, fromHrc: 60, toHrc: 61 })
    expect(steps).toMatchObject([{ step: 'preheat', fromC: 300, toC: 500 }, { step: 'austenitise', fromC: 790, toC: 820, toMin: 10 }, { step: 'quench', medium: 'oil' }, { step: 'temper', toMin: 120, times: 1 }])
  })

  // Data sheets of 1.2379: twice, two hours at least, quenched to 51–66 °C; 200 °C 61/60.
  test('1.2379 is tempered twice, as soon as it is down at 51 to 66 °C', () => {
    const { steps, cautions } = heat({ steel: '1.2379', hrc: 60.5, stressRelief: true })
    expect(steps).toMatchObject([{ step: 'stress relief' }, { step: 'preheat', fromC: 750 }, { step: 'austenitise', fromC: 1000, toC: 1030, fromMin: 20, toMin: 45 }, { step: 'quench', fromC: 51, toC: 66 }, { step: 'temper', fromC: 200, toMin: 120, times: 2 }])
    expect(cautions).toEqual(['furnace', 'untempered'])
  })

  // Technical card of 1.2312: 46 HRC at 450 °C, 43 at 500: 44 at 483 (own arithmetic).
  test('1.2312 to 44 HRC: about 483 °C', () => expect(heat({ steel: '1.2312', hrc: 44 }).temper!.atC).toBeCloseTo(483.3, 1))

  test('42CrMo4 to a hardness is refused: the temperatures of its row were not seen', () => expect(heat({ steel: '42CrMo4', hrc: 52 })).toMatchObject({ refused: 'no-tempering-rows' }))

  test('rows of the shop go before those of the books', () => {
    expect(heat({ steel: '42CrMo4', hrc: 52, table: { tempering: [[200, 51, 53]] } })).toMatchObject({ steel: '42CrMo4', temper: { atC: 200 }, steps: expect.arrayContaining([expect.objectContaining({ step: 'temper', source: 'SHOP', standing: 'shop' })]) as unknown })
  })

  test('everything it answers can be said', () => {
    for (const raw of [{ steel: '1.2842', hrc: 60 }, { steel: '1.2379', hrc: 61.8, measuredHrc: 64 }, { steel: '1.2510', hrc: 60, measuredHrc: 66 }, { steel: '1.2379', measuredHrc: 40 }, { steel: 'C45U', hrc: 50 }]) {
      const { findings, sum } = heat(raw)
      const said = [...findings.map((one) => sayFinding(one, plainUnits)), ...sum.map((one) => saySum(one, plainUnits)).flatMap(({ title, inWords, worked }) => [title, inWords, worked])]
      expect(said.filter((text) => /\?|undefined|NaN|null|Note:|\{|\}/.test(text))).toEqual([])
      expect(sum.length).toBeGreaterThan(0)
    }
    expect(sayRefusal({ code: 'no-tempering-rows', facts: { field: 'hrc', given: 52, needed: 'rows of your own', steel: '42CrMo4' } }, plainUnits)).toBe('Hardness: 52 HRC asked of 42CrMo4, for which no tempering table is at hand; bring rows of your own.')
  })
})
