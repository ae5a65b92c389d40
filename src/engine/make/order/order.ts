import type { Finding } from '#model/finding.ts'
import type { HeightsWanted, Order, OrderWanted } from '#model/order.ts'
import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { heightOf, type Ladder } from '#engine/rack/heights/ladder.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** The most heights and bars of one order: beyond it a step or a number is a slip of the pen. */
export const mostHeights = 500
const mostBars = 3000

/** A bar so many times as high as thick topples while it is made and used. Common practice, no source. */
const slenderRatio = 8

/**
 * Heights, length and number of the bars that an order asks for.
 *
 * A ladder by the jaw counts down from `belowMm` under the top of the jaw, to the last step that is not below `lowestMm`.
 *
 * @throws Refusal `size-not-positive`, `wish-negative`, `ladder-upside-down`, `too-many` (heights, bars), `length-not-left`
 * @source MAKE-RULES
 */
export function orderOf(wanted: OrderWanted): Order {
  const { thicknessMm, pairs, vises, use, hrc, dueDay } = wanted
  refuseUnfit(wanted)
  const heightsMm = heightsOf(wanted.heights), lengthMm = lengthOf(wanted), each = 2 * pairs * vises, bars = each * heightsMm.length
  if (bars > mostBars) throw new Refusal('too-many', { field: 'pairs', given: bars, needed: mostBars })
  return { heightsMm, thicknessMm, lengthMm, pairs, vises, each, bars, use, hrc, dueDay, findings: findingsOf(wanted, heightsMm, lengthMm), sum: sumOf(wanted, heightsMm, each, bars, lengthMm) }
}

function heightsOf(heights: HeightsWanted): readonly number[] {
  if (heights.by === 'list') return [...new Set(heights.heightsMm)].toSorted((a, b) => a - b)
  const { stepMm } = heights, lowMm = heights.by === 'ladder' ? heights.fromMm : heights.lowestMm, topMm = heights.by === 'ladder' ? heights.toMm : heights.jawHeightMm - heights.belowMm
  if (topMm < lowMm - touchMm) throw upsideDown(heights, lowMm, topMm)
  const rungs = Math.floor((topMm - lowMm) / stepMm + 1e-6) + 1
  if (rungs > mostHeights) throw new Refusal('too-many', { field: 'heights.stepMm', given: rungs, needed: mostHeights })
  const ladder: Ladder = { lowest: heights.by === 'ladder' ? lowMm : topMm - (rungs - 1) * stepMm, step: stepMm, rungs }
  return Array.from({ length: rungs }, (_, rung) => heightOf(ladder, rung))
}

function upsideDown({ by }: HeightsWanted, lowMm: number, topMm: number): Refusal {
  return new Refusal('ladder-upside-down', by === 'ladder' ? { field: 'heights.toMm', given: topMm, needed: { leastMm: lowMm } } : { field: 'heights.lowestMm', given: lowMm, needed: { mostMm: topMm } })
}

const lengthOf = ({ length }: OrderWanted): number => (length.by === 'length' ? length.lengthMm : Math.round((length.jawWidthMm - length.underMm) * 1e9) / 1e9)

type Sizes = readonly (readonly [field: string, given: number])[]

function refuseUnfit(wanted: OrderWanted): void {
  const { heights, length, pairs, vises } = wanted
  for (const [field, given] of sizesOf(wanted)) if (given <= touchMm) throw new Refusal('size-not-positive', { field, given, needed: { aboveMm: 0 } })
  for (const [field, given] of [['pairs', pairs], ['vises', vises]] as const) {
    if (given < 1) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
    if (given > 1000) throw new Refusal('too-many', { field, given, needed: 1000 })
  }
  const wishes: Sizes = [...(heights.by === 'jaw' ? [['heights.belowMm', heights.belowMm] as const] : []), ...(length.by === 'jaw' ? [['length.underMm', length.underMm] as const] : [])]
  for (const [field, given] of wishes) if (given < 0) throw new Refusal('wish-negative', { field, given, needed: 0 })
  if (heights.by === 'list' && heights.heightsMm.length === 0) throw new Refusal('field-missing', { field: 'heights.heightsMm', given: null, needed: 'a list' })
  if (length.by === 'jaw' && length.underMm >= length.jawWidthMm - touchMm) throw new Refusal('length-not-left', { field: 'length.underMm', given: length.underMm, needed: { lessMm: length.jawWidthMm } })
}

/** Everything that has to be above 0. */
function sizesOf({ heights, length, thicknessMm }: OrderWanted): Sizes {
  const long = length.by === 'length' ? (['length.lengthMm', length.lengthMm] as const) : (['length.jawWidthMm', length.jawWidthMm] as const), others: Sizes = [long, ['thicknessMm', thicknessMm]]
  switch (heights.by) {
    case 'list': return [...heights.heightsMm.map((mm, k) => [`heights.heightsMm[${k}]`, mm] as const), ...others]
    case 'ladder': return [['heights.fromMm', heights.fromMm], ['heights.stepMm', heights.stepMm], ...others]
    case 'jaw': return [['heights.jawHeightMm', heights.jawHeightMm], ['heights.stepMm', heights.stepMm], ['heights.lowestMm', heights.lowestMm], ...others]
  }
}

function findingsOf({ heights, length, thicknessMm }: OrderWanted, heightsMm: readonly number[], lengthMm: number): readonly Finding[] {
  const top = heightsMm.at(-1)!, slender = heightsMm.filter((mm) => mm > slenderRatio * thicknessMm + touchMm), square = heightsMm.filter((mm) => mm <= thicknessMm + touchMm)
  return [
    ...(heights.by === 'ladder' && heights.toMm - top > touchMm ? [{ code: 'ladder-ends-short', facts: { topMm: top, toMm: heights.toMm } }] : []),
    ...(slender.length > 0 ? [{ code: 'bars-slender', facts: { fromMm: slender[0]!, thicknessMm, ratio: slenderRatio } }] : []),
    ...(square.length > 0 ? [{ code: 'bars-not-higher-than-thick', facts: { toMm: square.at(-1)!, thicknessMm } }] : []),
    ...(top > lengthMm + touchMm ? [{ code: 'bars-higher-than-long', facts: { topMm: top, lengthMm } }] : []),
    ...(length.by === 'jaw' && length.underMm < touchMm ? [{ code: 'bars-flush-with-jaws', facts: { lengthMm } }] : []),
  ]
}

function sumOf({ heights, length, pairs, vises }: OrderWanted, heightsMm: readonly number[], each: number, bars: number, lengthMm: number): readonly Sum[] {
  const sources = ['MAKE-RULES'], rungs = heightsMm.length, topMm = heightsMm.at(-1)!
  return [
    ...(heights.by === 'jaw' ? [{ formula: 'ladder-top', result: { name: 'ladderTopMm', value: topMm }, inputs: { jawHeightMm: heights.jawHeightMm, belowMm: heights.belowMm }, sources }] : []),
    ...(heights.by === 'list' ? [] : [{ formula: 'ladder-rungs', result: { name: 'rungs', value: rungs }, inputs: { ladderTopMm: topMm, ladderLowMm: heightsMm[0]!, stepMm: heights.stepMm }, sources }]),
    { formula: 'bars-each', result: { name: 'each', value: each }, inputs: { pairs, vises }, sources },
    { formula: 'bars-in-all', result: { name: 'bars', value: bars }, inputs: { each, rungs }, sources },
    ...(length.by === 'jaw' ? [{ formula: 'length-under-jaw', result: { name: 'lengthMm', value: lengthMm }, inputs: { jawWidthMm: length.jawWidthMm, underMm: length.underMm }, sources }] : []),
  ]
}
