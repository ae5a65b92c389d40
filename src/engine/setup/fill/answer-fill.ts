import type { Sum } from '#model/sum.ts'
import { fillsOf, type Fill } from '#engine/setup/fill/fill.ts'
import { readFillCase } from '#engine/setup/fill/read-fill.ts'
import type { Ignored } from '#engine/read/read-case.ts'

export type FillAnswer = { readonly fills: readonly Fill[]; readonly sum: readonly Sum[] } & Ignored

/** The calculation `fill`: one raw case in, its answer out; the sum is that of the best. @throws Refusal as `readFillCase` */
export function answerFill(raw: unknown): FillAnswer {
  const { question, ignored } = readFillCase(raw), fills = fillsOf(question)
  return { fills, ignored, sum: fills.slice(0, 1).flatMap((best) => sumOf(best, question.targetMm)) }
}

function sumOf({ sizesMm, totalMm, errorMm }: Fill, targetMm: number): readonly Sum[] {
  const sources = ['GEOMETRY'], pieceMm = (k: number) => sizesMm[k] ?? null
  return [
    { formula: 'fill-total', result: { name: 'totalMm', value: totalMm }, inputs: { firstMm: pieceMm(0), secondMm: pieceMm(1), thirdMm: pieceMm(2) }, sources },
    { formula: 'fill-error', result: { name: 'errorMm', value: errorMm }, inputs: { totalMm, targetMm }, sources },
  ]
}
