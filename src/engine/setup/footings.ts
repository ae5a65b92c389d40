import { trusts, whereabouts, type Bar } from '#model/bar.ts'
import { Refusal } from '#model/refusal.ts'

/** How the bars of a footing stand; also their order among the ways. */
export const stands = ['on edge', 'lying flat', 'single'] as const
export type Stand = (typeof stands)[number]

/**
 * Every way in which one or two bars of a rack may stand, in columns: entry k of each column belongs to footing k.
 *
 * Two mates on edge, the same lying flat, one bar alone on edge. Within a stand footings come in the order of their
 * bars' ids. `first` stands at the fixed jaw, `second` at the moving jaw (−1: alone); both are indexes into `bars`.
 */
export type Footings = {
  /** Ascending by id in code units, so that a smaller index is an earlier id. */
  readonly bars: readonly Bar[]
  readonly count: number
  /** So many pairs of mates: footing k of them on edge is the same pair as k + pairs lying flat. */
  readonly pairs: number
  /** Index into `stands`. */
  readonly stand: Uint8Array
  readonly first: Int32Array
  readonly second: Int32Array
  /** Mean of the sizes that stand. */
  readonly seatMm: Float64Array
  /** Standing size of the first less that of the second; NaN while one of them is only marked; 0 alone. */
  readonly differUm: Float64Array
  readonly acrossFirstMm: Float64Array
  readonly acrossSecondMm: Float64Array
  readonly lengthFirstMm: Float64Array
  readonly lengthSecondMm: Float64Array
  /** Of the worst bar, as indexes into `trusts` and `whereabouts`. */
  readonly trust: Uint8Array
  readonly where: Uint8Array
  /** Footings of one number are alike in the plan: as many bars, as wide and as long. */
  readonly footprint: Int32Array
  /** Footings of one number have as many bars, as long. */
  readonly lengths: Int32Array
}

/** More mates in one group than any set has: the pairs of all groups together stay below this. */
const mostPairs = 500_000

/** @throws Refusal `too-many` where bars share mates' ids so widely that they make more than half a million pairs */
export function footingsOf(rack: readonly Bar[]): Footings {
  const bars = rack.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  const pairs = pairsOf(bars), count = 2 * pairs.length + bars.length
  const lengths = numbering(), footprints = numbering()
  const footings = {
    bars, count, pairs: pairs.length,
    stand: new Uint8Array(count), first: new Int32Array(count), second: new Int32Array(count).fill(-1),
    seatMm: new Float64Array(count), differUm: new Float64Array(count),
    acrossFirstMm: new Float64Array(count), acrossSecondMm: new Float64Array(count),
    lengthFirstMm: new Float64Array(count), lengthSecondMm: new Float64Array(count),
    trust: new Uint8Array(count), where: new Uint8Array(count),
    footprint: new Int32Array(count), lengths: new Int32Array(count),
  }
  const put = (k: number, stand: Stand, a: number, b: number) => {
    const one = bars[a]!, two = bars[b]!, flat = stand === 'lying flat', alone = stand === 'single'
    const [oneMm, twoMm] = flat ? [one.thicknessMm, two.thicknessMm] : [one.heightMm, two.heightMm]
    const marked = flat ? [one, two].some((bar) => bar.thicknessStanding === 'marked') : [one, two].some((bar) => bar.standing === 'marked')
    const acrossOneMm = flat ? one.heightMm : one.thicknessMm, acrossTwoMm = flat ? two.heightMm : two.thicknessMm
    footings.stand[k] = stands.indexOf(stand)
    footings.first[k] = a
    if (!alone) footings.second[k] = b
    footings.seatMm[k] = (oneMm + twoMm) / 2
    footings.differUm[k] = alone ? 0 : marked ? NaN : (oneMm - twoMm) * 1000
    footings.acrossFirstMm[k] = acrossOneMm
    footings.acrossSecondMm[k] = acrossTwoMm
    footings.lengthFirstMm[k] = one.lengthMm
    footings.lengthSecondMm[k] = two.lengthMm
    footings.trust[k] = Math.max(trusts.indexOf(one.trust), trusts.indexOf(two.trust))
    footings.where[k] = Math.max(whereabouts.indexOf(one.where), whereabouts.indexOf(two.where))
    const long = `${alone ? 1 : 2} ${one.lengthMm} ${two.lengthMm}`
    footings.lengths[k] = lengths(long)
    footings.footprint[k] = footprints(`${long} ${acrossOneMm} ${acrossTwoMm}`)
  }
  pairs.forEach(([a, b], k) => {
    put(k, 'on edge', a, b)
    put(pairs.length + k, 'lying flat', a, b)
  })
  bars.forEach((_, k) => put(2 * pairs.length + k, 'single', k, k))
  return footings
}

/** Worse than this, as an index into `trusts`, nobody may take a bar: it is in work, or gone. */
export const worstAvailable = trusts.indexOf('drill bar')

/** As indexes into `trusts`. */
export const availableTrusts: readonly number[] = Array.from({ length: worstAvailable + 1 }, (_, trust) => trust)

export const isAvailable = (footings: Footings, k: number): boolean => footings.trust[k]! <= worstAvailable

export const standOf = (footings: Footings, k: number): Stand => stands[footings.stand[k]!]!

/** The bars of a footing, from the fixed jaw. */
export function barsOf({ bars, first, second }: Footings, k: number): readonly Bar[] {
  return second[k]! < 0 ? [bars[first[k]!]!] : [bars[first[k]!]!, bars[second[k]!]!]
}

/** The bars of a footing as they lie in the plan. */
export function inPlanOf(footings: Footings, k: number): readonly { readonly acrossMm: number; readonly lengthMm: number }[] {
  const one = { acrossMm: footings.acrossFirstMm[k]!, lengthMm: footings.lengthFirstMm[k]! }
  return footings.second[k]! < 0 ? [one] : [one, { acrossMm: footings.acrossSecondMm[k]!, lengthMm: footings.lengthSecondMm[k]! }]
}

export const widestMm = (footings: Footings, k: number): number => Math.max(footings.acrossFirstMm[k]!, footings.acrossSecondMm[k]!)
export const narrowestMm = (footings: Footings, k: number): number => Math.min(footings.acrossFirstMm[k]!, footings.acrossSecondMm[k]!)

/** Every two bars that share a mates' id, as indexes, in order. */
function pairsOf(bars: readonly Bar[]): readonly (readonly [number, number])[] {
  const groups = new Map<string, number[]>()
  bars.forEach(({ mates }, k) => {
    if (mates === undefined) return
    const group = groups.get(mates)
    if (group) group.push(k)
    else groups.set(mates, [k])
  })
  const count = [...groups.values()].reduce((sum, { length }) => sum + (length * (length - 1)) / 2, 0)
  if (count > mostPairs) throw new Refusal('too-many', { field: 'bars', given: count, needed: mostPairs })
  const pairs = [...groups.values()].flatMap((group) => group.flatMap((a, i) => group.slice(i + 1).map((b) => [a, b] as const)))
  return pairs.toSorted(([a, b], [c, d]) => a - c || b - d)
}

/** Numbers texts in the order in which they are first met. */
function numbering(): (text: string) => number {
  const numbers = new Map<string, number>()
  return (text) => {
    const known = numbers.get(text)
    if (known !== undefined) return known
    numbers.set(text, numbers.size)
    return numbers.size - 1
  }
}
