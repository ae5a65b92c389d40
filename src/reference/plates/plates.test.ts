// Published tables as public copies state them (fixtures/published/surface-plate-flatness.csv names them); the rest names its source beside it.
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { csvRows } from '#reference/csv-rows.ts'
import { plateFlatness } from '#reference/plates/plate-flatness.ts'
import { plateGrades } from '#reference/plates/plate-grades.ts'

const published = csvRows(readFileSync('fixtures/published/surface-plate-flatness.csv', 'utf8')).map((row) => row.map(Number) as [number, number, number, number, number, number, number])
const um = (rule: string, grade: string, lengthMm: number, widthMm: number): number => plateFlatness(rule, grade, lengthMm, widthMm)!.flatnessUm
const inch = 25.4

describe('plates', () => {
  test('has all 20 published sizes', () => expect(published).toHaveLength(20))

  test.each(published)('%d × %d in', (lengthIn, widthIn, _diagonal, formulaUin, tableUin, _tableUm, isoUm) => {
    const [lengthMm, widthMm] = [lengthIn * inch, widthIn * inch]
    expect(um('GGG-P-463c', 'AA', lengthMm, widthMm) / 0.0254).toBeCloseTo(formulaUin, 6)
    expect(um('ASME B89.3.7', 'AA', lengthMm, widthMm) / 0.0254).toBeCloseTo(tableUin, 9)
    expect(um('ASME B89.3.7', 'B', widthMm, lengthMm) / 0.0254).toBeCloseTo(4 * tableUin, 9)
    expect(um('ISO 8512-2', '0', lengthMm, widthMm)).toBeCloseTo(isoUm, 1)
    // the two forms of the formula differ by up to 1.5 %, because 1.6 and 1 are rounded
    expect(Math.abs(um('GGG-P-463c metric', 'AA', lengthMm, widthMm) / um('GGG-P-463c', 'AA', lengthMm, widthMm) - 1)).toBeLessThan(0.016)
  })

  // Own arithmetic from the formulas: ISO 8512-2 grade 1 (from memory), DIN 876 grades 0 and 1.
  test.each([[12 * inch, 12 * inch, 8, 5.2, 13], [18 * inch, 24 * inch, 9.8, 6.4, 16.1], [24 * inch, 36 * inch, 11.6, 7.7, 19.1], [300, 200, 7.4, 5.2, 13], [630, 400, 9.8, 6.5, 16.3]])(
    '%d × %d mm', (lengthMm, widthMm, iso1, din0, din1) => {
      expect(Math.abs(um('ISO 8512-2', '1', lengthMm, widthMm) - iso1)).toBeLessThan(0.051)
      expect(Math.abs(um('DIN 876', '0', lengthMm, widthMm) - din0)).toBeLessThan(0.051)
      expect(Math.abs(um('DIN 876', '1', lengthMm, widthMm) - din1)).toBeLessThan(0.051)
    })

  // Own arithmetic: 1 + 1.6 D² µm, D in m.
  test.each([[300, 200, 1.208], [630, 400, 1.891]])('%d × %d mm by the metric form', (lengthMm, widthMm, wanted) => {
    expect(um('GGG-P-463c metric', 'AA', lengthMm, widthMm)).toBeCloseTo(wanted, 3)
  })

  test('beside the listed sizes the formula counts, rounded up to 25 µin', () => {
    // 17 × 23 in is more than 5 % off 18 × 24: D² 818, 40 + 818/25 = 72.72, up to 75 µin (own arithmetic)
    expect(um('ASME B89.3.7', 'AA', 17 * inch, 23 * inch) / 0.0254).toBeCloseTo(75, 9)
    expect(um('ASME B89.3.7', 'AA', 17.2 * inch, 23 * inch) / 0.0254).toBeCloseTo(80, 9)
  })

  test('a larger plate or a coarser grade is never flatter; sides may change places', () => {
    const side = fc.double({ min: 100, max: 4000, noNaN: true })
    const rules = [...new Set(plateGrades.map(({ rule }) => rule))]
    fc.assert(fc.property(fc.constantFrom(...rules), side, side, fc.double({ min: 1, max: 1.5, noNaN: true }), (rule, lengthMm, widthMm, times) => {
      const grades = plateGrades.filter((row) => row.rule === rule).map(({ grade }) => um(rule, grade, lengthMm, widthMm))
      expect(grades).toEqual(grades.toSorted((a, b) => a - b))
      for (const { grade } of plateGrades.filter((row) => row.rule === rule)) {
        expect(um(rule, grade, lengthMm, widthMm)).toBe(um(rule, grade, widthMm, lengthMm))
        // the listed values of one rule jump against its formula
        if (rule !== 'ASME B89.3.7') expect(um(rule, grade, lengthMm * times, widthMm * times)).toBeGreaterThanOrEqual(um(rule, grade, lengthMm, widthMm))
      }
    }))
  })

  test('keeps what is from memory apart, and knows no grade that is none', () => {
    expect(plateFlatness('DIN 876', '00', 500, 400)).toMatchObject({ flatnessUm: 3, standing: 'memory', source: 'DIN-876' })
    expect(plateFlatness('DIN 876', '0', 500, 400)?.standing).toBe('published')
    expect(plateFlatness('ISO 8512-2', 'AA', 500, 400)).toBeNull()
  })
})
