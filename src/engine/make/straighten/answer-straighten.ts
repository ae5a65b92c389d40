import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { longestUm } from '#engine/inspect/reading-limits.ts'
import { type Straighten, straightenOf, type StraightenQuestion } from '#engine/make/straighten/straighten.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** The calculation `straighten`: one raw case in, its answer out. @throws Refusal with a malformed code, then `size-not-positive`, `wish-negative` */
export function answerStraighten(raw: unknown): Straighten & Ignored & { readonly sum: readonly Sum[] } {
  const { value: question, ignored } = readCase(raw, (object): StraightenQuestion => ({
    spanMm: object.number('spanMm'), widthMm: object.number('widthMm'), depthMm: object.number('depthMm'),
    eMPa: object.number('eMPa'), yieldMPa: object.number('yieldMPa'), wantedSetUm: object.number('wantedSetUm', longestUm),
  }))
  const { wantedSetUm, ...sizes } = question
  for (const [field, given] of Object.entries(sizes)) {
    if (given <= touchMm) throw new Refusal('size-not-positive', { field, given, needed: field.endsWith('Mm') ? { aboveMm: 0 } : { above: 0 } })
  }
  if (wantedSetUm < 0) throw new Refusal('wish-negative', { field: 'wantedSetUm', given: wantedSetUm, needed: 0 })
  const straighten = straightenOf(question)
  return { ...straighten, ignored, sum: sumOf(question, straighten) }
}

function sumOf({ spanMm, widthMm, depthMm, eMPa, yieldMPa, wantedSetUm }: StraightenQuestion, bent: Straighten): readonly Sum[] {
  const sources = ['BENDING'], { pyN, deltaYUm, p, forceN, springbackUm, pressDepthUm } = bent
  return [
    { formula: 'bending-first-load', result: { name: 'pyN', value: pyN }, inputs: { yieldMPa, pressedWidthMm: widthMm, pressedDepthMm: depthMm, spanMm }, sources },
    { formula: 'bending-first-depth', result: { name: 'deltaYUm', value: deltaYUm }, inputs: { yieldMPa, spanMm, eMPa, pressedDepthMm: depthMm }, sources },
    { formula: bent.status === 'hinge' ? 'bending-hinge-load' : 'bending-load', result: { name: 'p', value: p }, inputs: { wantedSetUm, deltaYUm }, sources },
    { formula: 'press-force', result: { name: 'forceN', value: forceN }, inputs: { p, pyN }, sources },
    { formula: 'springback', result: { name: 'springbackUm', value: springbackUm }, inputs: { p, deltaYUm }, sources },
    { formula: 'press-depth', result: { name: 'pressDepthUm', value: pressDepthUm }, inputs: { wantedSetUm, springbackUm }, sources },
  ]
}
