import type { Bar } from '#model/bar.ts'
import type { Finding } from '#model/finding.ts'
import type { Choice, SetupQuestion } from '#model/setup.ts'
import { firstAtLeast } from '#engine/numeric/sorted.ts'
import { atJawInstead } from '#engine/setup/at-jaw-instead.ts'
import { barsOf } from '#engine/setup/footings.ts'
import type { RackIndex } from '#engine/setup/index-rack.ts'
import { obstaclesOf } from '#engine/setup/obstacles.ts'
import { placeRanks } from '#engine/setup/order.ts'
import { inTheWayAtPlain } from '#engine/setup/places.ts'
import { isMatched, restsOnBars, searchFor } from '#engine/setup/search.ts'

/**
 * What would stand at a jaw where holes or through cuts keep a bar off it: a thinner one, a shorter one, a drill bar.
 *
 * Told of the bars of a choice that stand inboard or would be cut into; with no choice, of the first pair on edge that
 * has the height and no clear place. Nothing where no bar is kept off its jaw.
 *
 * @source SETUP-RULES
 */
export function waysAroundHoles(question: SetupQuestion, choice: Pick<Choice, 'bars' | 'stand' | 'stacked' | 'status'> | null, rack: RackIndex): readonly Finding[] {
  const bars = choice === null ? fouledPair(question, rack) : keptOff(choice, rack)
  if (bars.length !== 2) return []
  const flat = (choice?.stacked?.[0] ?? choice?.stand) === 'lying flat', obstacles = obstaclesOf(question.part, question.cuts, question.wishes)
  const inPlan = bars.map((bar) => ({ acrossMm: flat ? bar.heightMm : bar.thicknessMm, lengthMm: bar.lengthMm }))
  const inTheWay = inTheWayAtPlain(obstacles, inPlan), cut = bars.filter((bar, k) => inTheWay[k]!.length > 0 && bar.trust !== 'drill bar')
  const instead = ([0, 1] as const).flatMap((k) => {
    const { thickestMm, longestMm } = inTheWay[k]!.length > 0 ? atJawInstead(obstacles, inPlan, k) : nothing, { acrossMm } = inPlan[k]!
    if (thickestMm === null && longestMm === null) return []
    return [{ code: 'at-jaw-instead', facts: { bar: bars[k]!.id, from: k === 0 ? 'fixed jaw' : 'moving jaw', thickestMm, longestMm, acrossMm } }]
  })
  return [...instead, ...(cut.length === 0 ? [] : [{ code: 'drill-bar-instead', facts: { bars: cut.map((bar) => bar.id) } }])]
}

const nothing = { thickestMm: null, longestMm: null }

/** The two bars next to the bed, where one of them is kept off its jaw. */
function keptOff({ bars, status }: Pick<Choice, 'bars' | 'status'>, { footings }: RackIndex): readonly Bar[] {
  if (status !== 'inboard' && status !== 'fouled') return []
  return bars.slice(0, 2).flatMap((id) => footings.bars.find((bar) => bar.id === id) ?? [])
}

/** The first pair on edge from the low end of the window that has no clear place. */
function fouledPair(question: SetupQuestion, rack: RackIndex): readonly Bar[] {
  const search = searchFor(question, rack), { window } = search, { footings, seatsMm } = rack.bySeat['on edge'].all
  if (!restsOnBars(search, 'on edge') || !question.ways.includes('on edge')) return []
  for (let at = firstAtLeast(seatsMm, window.lowMm); at < footings.length && seatsMm[at]! <= window.highMm; at += 1) {
    if (isMatched(search, footings[at]!) && search.rankAt(footings[at]!) === placeRanks.fouled) return barsOf(search.footings, footings[at]!)
  }
  return []
}
