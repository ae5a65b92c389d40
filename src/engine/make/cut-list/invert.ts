/**
 * The inverse of a matrix of full rank, row by row, by elimination with the largest pivot of each column.
 *
 * @param matrix  used up
 */
export function invert(matrix: Float64Array, inverse: Float64Array, rows: number): void {
  inverse.fill(0)
  for (let r = 0; r < rows; r += 1) inverse[r * rows + r] = 1
  for (let c = 0; c < rows; c += 1) {
    let pivotRow = c
    for (let r = c + 1; r < rows; r += 1) if (Math.abs(matrix[r * rows + c]!) > Math.abs(matrix[pivotRow * rows + c]!)) pivotRow = r
    const pivot = matrix[pivotRow * rows + c]!
    for (let j = 0; j < rows; j += 1) {
      if (pivotRow !== c) {
        [matrix[c * rows + j], matrix[pivotRow * rows + j]] = [matrix[pivotRow * rows + j]!, matrix[c * rows + j]!];
        [inverse[c * rows + j], inverse[pivotRow * rows + j]] = [inverse[pivotRow * rows + j]!, inverse[c * rows + j]!]
      }
      matrix[c * rows + j]! /= pivot
      inverse[c * rows + j]! /= pivot
    }
    for (let r = 0; r < rows; r += 1) {
      const times = matrix[r * rows + c]!
      if (r === c || times === 0) continue
      for (let j = c; j < rows; j += 1) matrix[r * rows + j]! -= times * matrix[c * rows + j]!
      for (let j = 0; j < rows; j += 1) inverse[r * rows + j]! -= times * inverse[c * rows + j]!
    }
  }
}
