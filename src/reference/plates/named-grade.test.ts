import { expect, test } from 'vitest'
import { instrumentIsSchema } from '#model/instrument-record.ts'
import { flatnessNamed, namedGrades } from '#reference/plates/named-grade.ts'

// Own arithmetic from DIN 876 grade 0: 4 µm and 1/250 of the longest side, 630 mm.
test('a grade by its name has the flatness of its rule', () => {
  expect(flatnessNamed('DIN 876 0', 630, 400)).toMatchObject({ rule: 'DIN 876', grade: '0', source: 'DIN-876' })
  expect(flatnessNamed('DIN 876 0', 630, 400)?.flatnessUm).toBeCloseTo(6.52, 9)
  expect(flatnessNamed('DIN 876', 630, 400)).toBeNull()
})

test('no two grades are called alike, and each fits into the record of a plate', () => {
  expect(new Set(namedGrades).size).toBe(namedGrades.length)
  for (const grade of namedGrades) expect(instrumentIsSchema.safeParse({ is: 'plate', lengthMm: 630, widthMm: 400, grade, flatnessUm: null }).success).toBe(true)
})
