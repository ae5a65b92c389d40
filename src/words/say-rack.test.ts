import { describe, expect, it } from 'vitest'
import { sayField } from '#words/say-field.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { saySum } from '#words/say-sum.ts'
import { plainUnits, termsFor } from '#words/terms.ts'

const worked = (formula: string, name: string, value: number | null, inputs: { readonly [name: string]: number | string | null }) => saySum({ formula, result: { name, value }, inputs, sources: [] }, plainUnits).worked

describe('what the rack lacks, regrinding, straightening, in words', () => {
  it('says where something is amiss', () => {
    expect(sayField('stages[1].infeedUm', termsFor('US'))).toBe('stage 2, infeed')
    expect(sayField('setups[2].part.betweenJawsMm', termsFor('US'))).toBe('setup 3, part, between jaws')
    expect(sayField('vises[0].openingMm', termsFor('UK'))).toBe('vice 1, opening')
    expect(sayRefusal({ code: 'nothing-left', facts: { field: 'cleanUpUm', given: 25, needed: { lessMm: 0.02 } } }, plainUnits)).toBe('Clean-up: with 25 µm off each face nothing is left of the bars; take less, or leave out the worn one.')
    expect(sayRefusal({ code: 'too-few-stages', facts: { field: 'stages', given: 0, needed: 1 } }, plainUnits)).toBe('Stages: 0 given; give at least 1, with what a pass takes.')
  })

  it('shows how a number came about', () => {
    expect(worked('regrind-height', 'newHeightMm', 24.97, { bar: '2', lowestMm: 24.979, faces: 1, cleanUpUm: 9 })).toBe('24.979 − 1 × 9 µm = 24.97 mm')
    expect(worked('regrind-passes', 'passesTotal', 16, { cutting: 10, faces: 2, sparkOut: 3 })).toBe('10 + 2 × 3 = 16')
    expect(worked('share-served', 'share', 0.75, { served: 3, setups: 4 })).toBe('3 / 4 = 0.75')
    expect(worked('heights-same', 'stackedSameAllowed.count', 4, { windows: 10, bound: 4 })).toBe('for 10 windows; fewer than 4 cannot do = 4')
    expect(worked('heights-same', 'stackedSameAllowed.count', null, { windows: 10, bound: null })).toBe('some of 10 windows cannot be served = none')
    expect(worked('bending-first-load', 'pyN', 7500, { yieldMPa: 1500, pressedWidthMm: 25, pressedDepthMm: 6, spanMm: 120 })).toBe('2 × 1500 × 25 × 6² / (3 × 120) = 7500')
    expect(worked('press-depth', 'pressDepthUm', 3424, { wantedSetUm: 20, springbackUm: 3404 })).toBe('20 µm + 3404 µm = 3424 µm')
  })

  it('says what is missing, and what a press can do', () => {
    expect(sayFinding({ code: 'window-between-heights', facts: { windows: [0, 3] } }, plainUnits)).toBe('Windows 1 and 4: none of the heights that can be had lies inside. Take a finer step.')
    expect(sayFinding({ code: 'no-height-serves', facts: {} }, { ...plainUnits, words: 'UK' })).toContain('another vice')
    expect(sayFinding({ code: 'set-hangs-on-yield', facts: { wantedSetUm: 20, offPercent: 10, lowUm: 1.22, highUm: 87.1 } }, plainUnits)).toBe('With a yield stress 10 % higher or lower the same depth leaves 1.2 µm or 87.1 µm where 20 µm is wanted: creep up to the depth, let go and read each time.')
  })
})
