import type { Sum } from '#model/sum.ts'
import { meanRangeOf } from '#engine/numeric/mean-range.ts'
import { meanOf } from '#engine/numeric/total.ts'
import { type BarReadings, middlesOf, stationValuesOf } from '#engine/inspect/shape.ts'
import type { ShapedBar, ShapedPair, ShapeQuestion, ShapesAnswer } from '#engine/inspect/shapes.ts'
import { commonGuardFactor } from '#engine/inspect/verdict.ts'

const shapeSources = ['SHAPE-RULES']

/** How each figure of the bars, and of the pair, came about. */
export function sumOfShapes(question: ShapeQuestion, { bars, pair }: ShapesAnswer): readonly Sum[] {
  return [...bars.flatMap((shaped, i) => barSums(question, question.bars[i]!, shaped)), ...(pair ? pairSums(bars, pair, question.zeroMm) : [])]
}

function barSums({ zeroMm, noiseUm }: ShapeQuestion, bar: BarReadings, shaped: ShapedBar): readonly Sum[] {
  const { stationsMm, lines } = stationValuesOf(bar), values = lines.flat(), lengthMm = bar.lengthMm ?? stationsMm.at(-1)! - stationsMm[0]!
  const sum = (formula: string, name: string, value: number | null | undefined, inputs: Sum['inputs'], sources = shapeSources): Sum[] =>
    value === null || value === undefined ? [] : [{ formula, result: { name, value }, inputs: { bar: bar.id, ...inputs }, sources }]
  const middleUm = meanOf(lines.flatMap((line) => middlesOf(stationsMm.length).map((i) => line[i]!)))
  return [
    ...sum('mean-height', 'meanHeightMm', shaped.meanHeightMm, { zeroMm, meanReadingUm: meanOf(values) }),
    ...sum('parallelism', 'parallelismUm', shaped.parallelismUm, { highestUm: Math.max(...values), lowestUm: Math.min(...values) }),
    ...sum('taper', 'taperUm', shaped.taperUm, { slopeUmPerMm: shaped.taperUm / lengthMm, lengthMm }),
    ...sum('crown', 'crownUm', shaped.crownUm, { middleUm, chordUm: middleUm - (shaped.crownUm ?? 0) }),
    ...sum('twist', 'twistUm', shaped.twistUm, { slopeUmPerMm: (shaped.twistUm ?? 0) / lengthMm, lengthMm }),
    ...sum('range-bias', 'rangeBiasUm', shaped.rangeBiasUm, { noiseUm, meanRange: meanRangeOf(values.length), readings: values.length }, ['RANGE-CONSTANTS']),
    ...sum('proved-to', 'provedToUm', shaped.provedToUm, { valueUm: shaped.parallelismUm, guardFactor: commonGuardFactor, uUm: shaped.uncertainty?.parallelism.u ?? null }, ['ISO-14253-1']),
  ]
}

function pairSums(bars: readonly ShapedBar[], pair: ShapedPair, zeroMm: number): readonly Sum[] {
  const [firstUm, secondUm] = bars.map((bar) => (bar.meanHeightMm - zeroMm) * 1000) as [number, number]
  const worstUm = pair.worstTurnedUm === null ? pair.worstAsLaidUm : Math.min(pair.worstAsLaidUm ?? Infinity, pair.worstTurnedUm)
  return [
    { formula: 'mean-difference', result: { name: 'meanDifferenceUm', value: pair.meanDifferenceUm }, inputs: { secondUm, firstUm }, sources: shapeSources },
    ...(pair.provedToUm === undefined ? [] : [{
      formula: 'proved-to', result: { name: 'provedToUm', value: pair.provedToUm },
      inputs: { valueUm: worstUm, guardFactor: commonGuardFactor, uUm: pair.uncertainty?.difference.u ?? null }, sources: ['ISO-14253-1'],
    }]),
  ]
}
