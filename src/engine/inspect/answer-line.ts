import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { lineOf, type LineAnswer, type LineQuestion } from '#engine/inspect/line.ts'
import { mostAnyUnit, mostStations } from '#engine/inspect/reading-limits.ts'

/** Higher powers of places along a bar tell nothing. */
const mostDegree = 10

/** The calculation `line`: one raw case in, its answer out. @throws Refusal with a malformed code, `degree-out-of-range`, then as `lineOf` */
export function answerLine(raw: unknown): LineAnswer & Ignored & { readonly sum: readonly Sum[] } {
  const { value: question, ignored } = readCase(raw, (object): LineQuestion => ({
    x: object.numbers('x', mostAnyUnit, mostStations), y: object.numbers('y', mostAnyUnit, mostStations),
    degree: object.countOr('degree', 1), intercept: object.yesNoOr('intercept', true), at: object.numbersOr('at', [], mostAnyUnit),
  }))
  const least = question.intercept ? 0 : 1
  if (question.degree < least || question.degree > mostDegree) throw new Refusal('degree-out-of-range', { field: 'degree', given: question.degree, needed: { least, most: mostDegree } })
  const answer = lineOf(question)
  return { ...answer, ignored, sum: sumOf(question, answer) }
}

function sumOf({ x, degree }: LineQuestion, { coefficients, residualSd, residualSumOfSquares, dof, at }: LineAnswer): readonly Sum[] {
  const named = Object.fromEntries(coefficients.map((value, k) => [`b${k + degree + 1 - coefficients.length}`, value])), sources = ['NIST-STRD']
  return [
    { formula: 'least-squares', result: { name: 'residualSumOfSquares', value: residualSumOfSquares }, inputs: { readings: x.length, degree, ...named }, sources },
    { formula: 'residual-sd', result: { name: 'residualSd', value: residualSd }, inputs: { residualSumOfSquares, dof }, sources },
    ...at.map(({ x: place, y, u }) => ({ formula: 'line-at', result: { name: 'y', value: y }, inputs: { x: place, u, ...named }, sources: ['GUM'] })),
  ]
}
