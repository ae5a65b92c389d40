import { describe, expect, it } from 'vitest'
import { sayFinding } from '#words/say-finding.ts'
import { saySum } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'

describe('seat, prediction and hold in words', () => {
  it.each([
    ['bar-loose', { bar: 1, gapUm: 7 }, 'Bar 2 does not carry: 7 µm is left over it at least. It pulls out and can walk into the cutter: hold it with a spring or take it out.'],
    ['corner-loose', { corner: 'moving-left', gapUm: 7.53 }, 'Loose at the movable jaw, left end: 7.5 µm.'],
    ['gap-closed-by-force', { gapUm: 7, forceN: 1234.5 }, 'At most 1235 N down would close 7 µm. A gap closed by force opens when the jaw does, and the wedge is then in the work: clean, stone, exchange; do not hit harder.'],
    ['measure-first', { of: 'jaw-slope', bar: null, gainUm: 2 }, "What pays most to measure better: the slope of the fixed jaw and the part's squareness. It would take 2 µm off."],
    ['hold-least', { limit: 'pull-up', ratio: 1.239 }, "The nearest limit is the cutter pulling the part up: there is 1.23 times what was asked for, the shop's factor included."],
    ['hold-not-computed', { what: ['line-contact', 'overhang', 'thin-walls'] }, 'Not computed: line contact, overhang past the bars and thin walls.'],
  ] as const)('%s', (code, facts, said) => {
    expect(sayFinding({ code, facts }, plainUnits)).toBe(said)
  })

  it('shows the sum of a tilt', () => {
    const sum = { formula: 'tilt-along', result: { name: 'tiltAlongUm', value: 3 }, inputs: { bUmPerMm: 0.02, partLengthMm: 150 }, sources: ['SEAT-MODEL'] }
    expect(saySum(sum, plainUnits)).toMatchObject({ title: 'Out of level along', inWords: 'slope along × length of the part', worked: '0.02 × 150 = 3 µm' })
  })
})
