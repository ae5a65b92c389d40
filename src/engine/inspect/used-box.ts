import type { Look } from '#model/check.ts'
import type { Finding } from '#model/finding.ts'
import type { ReadWith } from '#model/read-with.ts'
import { Refusal } from '#model/refusal.ts'
import type { Use } from '#model/wishes.ts'
import { checkUncertainty } from '#engine/inspect/check-uncertainty.ts'
import { matesOf } from '#engine/inspect/mates.ts'
import { type UseLimits, usesProved } from '#engine/inspect/uses-proved.ts'
import { worstUses } from '#engine/inspect/worst-uses.ts'
import { regrindOf } from '#engine/rack/regrind/regrind.ts'

/** A bar out of the box: its heights by micrometer from the marked end, as many of each bar, and what was seen of it. */
export type BoxBar = { readonly id: string; readonly heightsMm: readonly number[]; readonly seen: Look['seen']; readonly rock: Look['rock'] }

/** The shop's own rules for a box, in µm and mm. */
export type BoxRules = {
  /** To come off each face of a reground bar at its lowest point. */
  readonly cleanUpUm: number
  /** A new height goes down to a multiple of it; null: it does not. */
  readonly stepUm: number | null
  /** More than this off one bar is not worth the wheel. */
  readonly mostRemovalUm: number
}

/** Common practice, no source; the shop's to change. */
export const commonBoxRules: BoxRules = { cleanUpUm: 10, stepUm: 10, mostRemovalUm: 300 }

export type BoxPair = {
  readonly bars: readonly [string, string]
  readonly turnOne: boolean
  readonly worstUm: number
  /** Proved by micrometer, or by value where the instrument is not known: drilling and milling at most. */
  readonly uses: readonly Use[]
  readonly because: readonly Finding[]
}
/** Two bars to be ground together, or one alone. */
export type BoxRegrind = { readonly bars: readonly string[]; readonly newHeightMm: number; readonly totalUm: number; readonly because: readonly Finding[] }
export type BoxLeft = { readonly bar: string; readonly because: readonly Finding[] }

export type SortedBox = {
  /** Best first. */
  readonly pairs: readonly BoxPair[]
  /** May be cut into. */
  readonly drillBars: readonly BoxLeft[]
  readonly regrind: readonly BoxRegrind[]
  readonly scrap: readonly BoxLeft[]
  /** What is to be done before the others are used. */
  readonly findings: readonly Finding[]
}

/** What two heights by micrometer can tell; the finer uses want the plate. Common practice, no source. */
const boxUses = ['drilling', 'milling'] as const

/**
 * A box of unknown bars, sorted: bent ones are scrap (or go to the press), drilled ones drill bars; of the rest as many pairs as are good
 * for milling, then for drilling; what is left is ground in pairs of like height where that costs little, and else serves as drill bars.
 *
 * @throws Refusal `too-few-bars`; `readings-do-not-match-stations`, `too-few-readings` below two heights; `size-not-positive`
 */
export function sortBox(bars: readonly BoxBar[], limitsUm: UseLimits, readWith: ReadWith | null, rules: BoxRules = commonBoxRules): SortedBox {
  refuseUnfit(bars)
  const sorted = bars.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)), uneven = (bar: BoxBar): number => rangeUm(bar.heightsMm)
  const bent = sorted.filter(({ seen, rock }) => seen.includes('bent') || rock === 'rocks'), straight = sorted.filter((bar) => !bent.includes(bar))
  const drilled = straight.filter(({ seen }) => seen.includes('drilled')), whole = straight.filter((bar) => !drilled.includes(bar))
  const pairs: BoxPair[] = []
  let rest = whole
  for (const use of boxUses.toReversed()) {
    const limitUm = limitsUm[use] ?? 0, found = pairsOf(rest.filter((bar) => uneven(bar) <= limitUm + equalUm), limitUm).map((pair) => pairFrom(pair, limitsUm, readWith))
    pairs.push(...found)
    rest = rest.filter(({ id }) => !found.some((pair) => pair.bars.includes(id)))
  }
  const { ground, left } = groundTogether(rest, rules), drillingUm = limitsUm.drilling ?? 0
  return {
    pairs, regrind: ground,
    drillBars: [
      ...drilled.map(({ id }) => ({ bar: id, because: [{ code: 'box-drilled', facts: { bar: id } }] })),
      ...left.filter((bar) => uneven(bar) <= drillingUm + equalUm).map(({ id }) => ({ bar: id, because: [{ code: 'box-no-mate', facts: { bar: id } }] })),
    ],
    scrap: [
      ...bent.map(({ id }) => ({ bar: id, because: [{ code: 'box-bent', facts: { bar: id } }] })),
      ...left.filter((bar) => uneven(bar) > drillingUm + equalUm).map((bar) => ({ bar: bar.id, because: [{ code: 'box-too-worn', facts: { bar: bar.id, rangeUm: uneven(bar), mostUm: rules.mostRemovalUm } }] })),
    ],
    findings: [
      ...seenOf(straight, 'nicked', 'box-stone'), ...seenOf(straight, 'magnetised', 'box-demagnetise'),
      ...(readWith === null ? [{ code: 'instrument-not-named', facts: {} }] : []),
    ],
  }
}

const equalUm = 1e-9
const rangeUm = (heightsMm: readonly number[]): number => Math.round((Math.max(...heightsMm) - Math.min(...heightsMm)) * 1e9) / 1e6

const seenOf = (bars: readonly BoxBar[], mark: Look['seen'][number], code: string): readonly Finding[] => {
  const ids = bars.flatMap(({ id, seen }) => (seen.includes(mark) ? [id] : []))
  return ids.length === 0 ? [] : [{ code, facts: { bar: ids } }]
}

type Laid = { readonly a: BoxBar; readonly b: BoxBar; readonly turnOne: boolean; readonly worstUm: number }

/** The most pairs whose worst place keeps within a limit. */
function pairsOf(bars: readonly BoxBar[], limitUm: number): readonly Laid[] {
  const lowestMm = Math.min(...bars.flatMap(({ heightsMm }) => heightsMm)), profiles = bars.map(({ heightsMm }) => heightsMm.map((heightMm) => Math.round((heightMm - lowestMm) * 1e9) / 1e6))
  let few = 0, many = Math.floor(bars.length / 2), found: readonly Laid[] = []
  while (few < many) {
    const k = Math.ceil((few + many) / 2), answer = matesOf({ kind: 'profile', profiles, k })
    if (!('worst' in answer) || answer.worst > limitUm + equalUm) { many = k - 1; continue }
    few = k
    found = answer.groups.map(({ bars: [i, j], turnOne, cost }) => ({ a: bars[i]!, b: bars[j]!, turnOne, worstUm: cost }))
  }
  return found
}

function pairFrom({ a, b, turnOne, worstUm }: Laid, limitsUm: UseLimits, readWith: ReadWith | null): BoxPair {
  const limits: UseLimits = Object.fromEntries(boxUses.flatMap((use) => (limitsUm[use] === undefined ? [] : [[use, limitsUm[use]]])))
  const u = readWith && checkUncertainty(readWith, { heightMm: a.heightsMm[0]!, repeatabilityUm: null, repeatabilityDof: 0, readings: a.heightsMm.length, perPlace: 1, driftUm: null })
  const judged = worstUses([usesProved(worstUm, u?.difference.u ?? 0, limits), ...[a, b].map(({ heightsMm }) => usesProved(rangeUm(heightsMm), u?.parallelism.u ?? 0, limits))])
  const good = judged.flatMap(({ use, verdict }) => (verdict === 'proved' ? [use] : []))
  return { bars: [a.id, b.id], turnOne, worstUm, uses: good, because: [{ code: 'mates-differ', facts: { bar: [a.id, b.id], worstUm, turned: turnOne } }, { code: 'mates-good-for', facts: { uses: good } }] }
}

/** Neighbours in height that come to one height for little; a bar left over alone if it only wants truing. */
function groundTogether(bars: readonly BoxBar[], rules: BoxRules): { readonly ground: readonly BoxRegrind[]; readonly left: readonly BoxBar[] } {
  const byHeight = bars.toSorted((a, b) => Math.min(...a.heightsMm) - Math.min(...b.heightsMm)), ground: BoxRegrind[] = [], left: BoxBar[] = []
  for (let at = 0; at < byHeight.length; at += 1) {
    const pair = byHeight.slice(at, at + 2), together = pair.length === 2 ? regroundOf(pair, rules) : null
    if (together) { ground.push(together); at += 1 } else left.push(byHeight[at]!)
  }
  return { ground, left }
}

function regroundOf(bars: readonly BoxBar[], { cleanUpUm, stepUm, mostRemovalUm }: BoxRules): BoxRegrind | null {
  const { newHeightMm, totalUm } = regrindOf({ bars, cleanUpUm, stepUm, faces: 2, stages: [{ infeedUm: 10, takesUm: 0 }], sparkOut: 0, windowsMm: null })
  if (totalUm > mostRemovalUm) return null
  return { bars: bars.map(({ id }) => id), newHeightMm, totalUm, because: [{ code: 'box-regrind', facts: { bar: bars.map(({ id }) => id), newHeightMm, totalUm } }] }
}

function refuseUnfit(bars: readonly BoxBar[]): void {
  if (bars.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: 0, needed: 1 })
  const needed = bars[0]!.heightsMm.length
  bars.forEach(({ heightsMm }, i) => {
    const field = `bars[${i}].heightsMm`
    if (heightsMm.length < 2) throw new Refusal('too-few-readings', { field, given: heightsMm.length, needed: 2 })
    if (heightsMm.length !== needed) throw new Refusal('readings-do-not-match-stations', { field, given: heightsMm.length, needed })
    const low = heightsMm.find((heightMm) => !(heightMm > 0))
    if (low !== undefined) throw new Refusal('size-not-positive', { field, given: low, needed: { aboveMm: 0 } })
  })
}
