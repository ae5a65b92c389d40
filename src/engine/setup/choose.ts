import type { SetupAnswer, SetupQuestion } from '#model/setup.ts'
import { choiceFrom, type Ranked } from '#engine/setup/choice-from.ts'
import { keyOf, type Found } from '#engine/setup/found.ts'
import { inOrder } from '#engine/setup/in-order.ts'
import { indexRack, type RackIndex } from '#engine/setup/index-rack.ts'
import { offersOf } from '#engine/setup/offers.ts'
import { openFindingsOf } from '#engine/setup/open-findings.ts'
import { deciderBetween } from '#engine/setup/order.ts'
import { rejectionsOf } from '#engine/setup/rejections.ts'
import { searchFor, type Search } from '#engine/setup/search.ts'
import { sumOfSetup } from '#engine/setup/setup-sum.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/**
 * Which bars of a rack to use for a part, how they stand, in which order and why; what is nearest or to be made when
 * nothing serves.
 *
 * `most`, `rejectedMost` and `only` cut the answer short and change nothing else: ranks, `best`, `make` and `offers` are
 * those of the whole rack. Left out, all is listed, but never more than ten thousand choices (a finding then says
 * so). Rejections come nearest first; rejected stacks, as many as pairs squared, are told only of the bars in `only`,
 * and of at most a dozen.
 *
 * @source SETUP-RULES
 */
export function chooseBars(question: SetupQuestion, rack: RackIndex): SetupAnswer {
  const search = searchFor(question, rack), looked = lookedAt(search)
  const { top, chosen, isCut } = ranked(search, looked)
  const [first, second] = top, { window } = search, serves = first !== undefined
  const rejected = question.rejectedMost === 0 ? [] : rejectionsOf(looked, question.only !== undefined && looked.footings.bars.length <= mostInStacks)
  return {
    window,
    choices: chosen.map((one) => choiceFrom(search, one)),
    rejected: rejected.slice(0, question.rejectedMost),
    best: first === undefined || second?.rank === first.rank ? null : { bars: first.found.bars.map((bar) => bar.id), stand: first.found.stand },
    make: serves || window.widthMm < -touchMm ? null : { lowMm: window.lowMm, highMm: window.highMm },
    ...(serves ? {} : { offers: offersOf(search) }),
    findings: [...openFindingsOf(question), ...(isCut ? [{ code: 'cut-short', facts: { most: mostChoices } }] : [])],
    sum: sumOfSetup(search, first?.found ?? null),
  }
}

/** More choices than these nobody can read, and no answer should carry. */
const mostChoices = 10_000

const mostInStacks = 12

/** The search among the bars that are to be looked at. */
function lookedAt(search: Search): Search {
  const { only } = search.question
  if (only === undefined) return search
  const ids = new Set(only)
  return searchFor(search.question, indexRack(search.footings.bars.filter((bar) => ids.has(bar.id))))
}

/** The first two of all, and the choices that were asked for. */
function ranked(search: Search, looked: Search): { readonly top: readonly Ranked[]; readonly chosen: readonly Ranked[]; readonly isCut: boolean } {
  const { most = mostChoices } = search.question, wanted = looked === search ? most : countOf(inOrder(looked), most)
  const ids = new Set(search.question.only), isLookedAt = ({ bars }: Found) => looked === search || bars.every((bar) => ids.has(bar.id))
  const top: Ranked[] = [], chosen: Ranked[] = []
  for (const one of rankedInOrder(search)) {
    if (top.length < 2) top.push(one)
    if (chosen.length < wanted && isLookedAt(one.found)) chosen.push(one)
    if (top.length === 2 && chosen.length >= wanted) break
  }
  return { top, chosen, isCut: search.question.most === undefined && chosen.length >= mostChoices }
}

/** With its rank: choices that nothing decides between share one, which is the place of the first of them. */
function* rankedInOrder(search: Search): Generator<Ranked, void> {
  let before: Found | null = null, rank = 1, count = 0
  for (const found of inOrder(search)) {
    count += 1
    if (before !== null) {
      yield { found: before, rank, next: found, only: false }
      if (deciderBetween(keyOf(search, before), keyOf(search, found)) !== null) rank = count
    }
    before = found
  }
  if (before !== null) yield { found: before, rank, next: null, only: count === 1 }
}

function countOf(entries: Generator<unknown, void>, most: number): number {
  let count = 0
  for (const _ of entries) {
    if (count >= most) break
    count += 1
  }
  return count
}
