import { describe, expect, it } from 'vitest'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { saySum } from '#words/say-sum.ts'
import { plainUnits } from '#words/terms.ts'

describe('what a check says', () => {
  it.each([
    ['lone-high-reading', { bar: 'A', line: 1, xMm: 75, aboveUm: 8.76 }, 'A at 75 on the second line stands 8.8 µm above the rest: perhaps a burr or a chip. Stone, wipe, read again.'],
    ['unit-slip', { bar: 'A', line: 0, xMm: 10, readingUm: 30, factor: 10 }, 'A at 10 reads 30 µm, about 10 times what its neighbours do. Is the unit or the decimal mark right?'],
    ['unit-slip', { bar: 'A', line: 0, xMm: 10, readingUm: 0.9, factor: 1 / 25.4 }, 'A at 10 reads 0.9 µm, about 25.4 times less than what its neighbours do. Is the unit or the decimal mark right?'],
    ['instrument-too-coarse', { of: 'difference', bar: ['A', 'B'], use: 'grinding', limitUm: 2, provable: false, uUm: 4.253, neededUUm: 0.6061 }, 'The difference of A and B: this instrument cannot prove 2 µm (grinding; standard uncertainty 4.25 µm). One with a standard uncertainty of at most 0.6 µm would.'],
    ['instrument-too-coarse', { of: 'parallelism', bar: ['A'], use: 'grinding', limitUm: 2, provable: true, uUm: 1.01, neededUUm: 0.999 }, 'A: not proved to 2 µm with this instrument (grinding; standard uncertainty 1.01 µm). One with a standard uncertainty of at most 0.99 µm would.'],
    ['value-at-limit', { of: 'difference', bar: ['A', 'B'], use: 'grinding', limitUm: 2 }, 'The difference of A and B: so near to 2 µm (grinding) that no instrument would prove it.'],
    ['tool-overdue', { tool: 'Micrometer', dueOn: '2026-01-31', day: '2026-03-04' }, 'Micrometer was due on 2026-01-31 and not calibrated again by 2026-03-04: what it proved is in doubt until it is.'],
    ['reading-unit-slip', { readingUm: 0.003, factor: 0.001, meantUm: 3, meant: '+3 µm' }, 'Read as 0.003 µm. Was +3 µm meant? Type the unit with it if not.'],
    ['part-not-known', { part: 'zero bar' }, 'The height of the bar it was zeroed on has no figure in the shop\'s records: it is missing from the uncertainty.'],
    ['mates-good-for', { uses: [] }, 'Proved for no use with this instrument.'],
    ['coverage-factor-needed', { correlated: ['V', 'I'] }, 'V and I hang together and have finite degrees of freedom: no coverage factor follows. Give one.'],
    ['cancels-between-mates', { part: 'block' }, 'The gage block is left out: mates read in one check at one spot share it.'],
  ] as const)('%s', (code, facts, said) => expect(sayFinding({ code, facts }, plainUnits)).toBe(said))

  it.each([
    ['uncertainty-negative', { field: 'uUm', given: -1, needed: { least: 0 } }, /−1 given; an uncertainty cannot be below 0\.$/],
    ['too-few-readings', { field: 'bars[0].stationsMm', given: 1, needed: 2 }, /^1 readings given; give at least 2\.$/],
    ['coverage-out-of-range', { field: 'coverage', given: 1, needed: { above: 0, below: 1 } }, /a coverage is more than 0 and less than 1\.$/],
    ['unknown-part', { field: 'products[0].of[1]', given: 'z', needed: ['a', 'b'] }, /'z' is no part of this budget; name one of a or b\.$/],
  ])('%s', (code, facts, said) => expect(sayRefusal({ code, facts }, plainUnits)).toMatch(said))

  it.each([
    [{ formula: 'parallelism', result: { name: 'parallelismUm', value: 2 }, inputs: { bar: 'A', highestUm: 4, lowestUm: 2 }, sources: [] }, 'highest − lowest', '4 µm − 2 µm = 2 µm'],
    [{ formula: 'proved-to', result: { name: 'provedToUm', value: 4.65 }, inputs: { valueUm: 3, guardFactor: 1.65, uUm: 1 }, sources: [] }, 'value + guard factor × uncertainty', '3 µm + 1.65 × 1 µm = 4.7 µm'],
    [{ formula: 'budget-u', result: { name: 'u', value: 5 }, inputs: { 'reading step': 3, 'a × b': 4 }, sources: [] }, 'root of the sum of the squares of reading step, a × b', 'root of the sum of the squares of reading step, a × b = 5'],
    [{ formula: 'chance-to-conform', result: { name: 'pConform', value: 0.95 }, inputs: { valueUm: 3, uUm: 1, lowerUm: null, upperUm: 5 }, sources: [] }, 'Φ((upper limit − value) / uncertainty)', 'Φ((5 µm − 3 µm) / 1 µm) = 0.95'],
  ])('%o', (sum, inWords, worked) => expect(saySum(sum, plainUnits)).toMatchObject({ inWords, worked }))
})
