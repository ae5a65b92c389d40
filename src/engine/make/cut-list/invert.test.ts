import fc from 'fast-check'
import { expect, test } from 'vitest'
import { invert } from '#engine/make/cut-list/invert.ts'

const inverseOf = (matrix: readonly number[], rows: number): number[] => {
  const inverse = new Float64Array(rows * rows)
  invert(Float64Array.from(matrix), inverse, rows)
  return [...inverse]
}

test('of the Hilbert matrix of order 3, whose inverse is known in whole numbers (Hilbert, Acta Mathematica 18, 1894; from memory)', () => {
  const inverse = inverseOf([1, 1 / 2, 1 / 3, 1 / 2, 1 / 3, 1 / 4, 1 / 3, 1 / 4, 1 / 5], 3)
  for (const [at, entry] of [9, -36, 30, -36, 192, -180, 30, -180, 180].entries()) expect(inverse[at]).toBeCloseTo(entry, 9)
})

test('a row that begins with 0 is exchanged', () => {
  expect(inverseOf([0, 2, 1, 0], 2)).toEqual([0, 1, 0.5, 0])
})

test('times the matrix it is one', () => {
  // Larger on the diagonal than all beside it together: such a matrix has an inverse.
  const matrices = fc.integer({ min: 1, max: 8 }).chain((rows) => fc.array(fc.integer({ min: -9, max: 9 }), { minLength: rows * rows, maxLength: rows * rows }).map((all) => ({ rows, matrix: all.map((value, at) => (at % (rows + 1) === 0 ? 100 + value : value)) })))
  fc.assert(fc.property(matrices, ({ rows, matrix }) => {
    const inverse = inverseOf(matrix, rows)
    for (let r = 0; r < rows; r += 1) for (let c = 0; c < rows; c += 1) {
      expect(Array.from({ length: rows }, (_, k) => matrix[r * rows + k]! * inverse[k * rows + c]!).reduce((sum, one) => sum + one, 0)).toBeCloseTo(r === c ? 1 : 0, 10)
    }
  }))
})
