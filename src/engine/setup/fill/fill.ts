import { byText } from '#engine/setup/by-id.ts'
import { idListsOf, type Group } from '#engine/setup/fill/id-lists.ts'
import { firstAtLeast } from '#engine/numeric/sorted.ts'
import { lengthClassOf } from '#engine/setup/order.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** One size of a bar. A bar may give several under one id, its height and its thickness; it is used once in a fill. */
export type Size = { readonly id: string; readonly sizeMm: number }

/** A gap to be filled by at most three sizes; `most` answers at most. */
export type FillQuestion = { readonly targetMm: number; readonly toleranceMm: number; readonly sizes: readonly Size[]; readonly most: number }

/** Bars side by side that fill the gap, ids in order; `errorMm` is total less target. */
export type Fill = { readonly ids: readonly string[]; readonly sizesMm: readonly number[]; readonly totalMm: number; readonly errorMm: number }

/** More than three pieces are a stack of slips, not a fill. Common practice, no source. */
const mostPieces = 3

/**
 * Which sizes add to a target: fewest pieces first, then nearest (1e-6 mm), then by ids.
 *
 * The first pieces are gone through by size; the last one is looked for where it would have to be, outwards, until nothing
 * better than the worst answer kept can follow.
 */
export function fillsOf({ targetMm, toleranceMm, sizes, most }: FillQuestion): readonly Fill[] {
  const rack = rackOf(sizes), fills: Fill[] = []
  for (let pieces = 1; pieces <= mostPieces && fills.length < most; pieces += 1) {
    const best = new BestOf(targetMm, toleranceMm, most - fills.length)
    goThrough(rack, best, [], pieces, targetMm)
    fills.push(...best.fills)
  }
  return fills
}

/** Bars of one size together, rising. */
type Rack = { readonly groups: readonly Group[]; readonly sizesMm: readonly number[] }

function rackOf(sizes: readonly Size[]): Rack {
  const ids = new Map<number, Set<string>>()
  for (const { id, sizeMm } of sizes) ids.set(sizeMm, (ids.get(sizeMm) ?? new Set()).add(id))
  const groups = [...ids].map(([sizeMm, of]) => ({ sizeMm, ids: [...of].sort(byText) })).sort((a, b) => a.sizeMm - b.sizeMm)
  return { groups, sizesMm: groups.map((group) => group.sizeMm) }
}

/** Adds `pieces` more, none smaller than the last one taken. */
function goThrough(rack: Rack, best: BestOf, taken: readonly number[], pieces: number, restMm: number): void {
  const from = taken.at(-1) ?? 0, { sizesMm } = rack, largestMm = sizesMm.at(-1) ?? 0
  if (pieces === 1) return lastPiece(rack, best, taken, from, restMm)
  for (let g = from; g < sizesMm.length && pieces * sizesMm[g]! <= restMm + best.withinMm; g += 1) {
    const leftMm = restMm - sizesMm[g]!
    if (leftMm - (pieces - 1) * largestMm <= best.withinMm) goThrough(rack, best, [...taken, g], pieces - 1, leftMm)
  }
}

function lastPiece({ groups, sizesMm }: Rack, best: BestOf, taken: readonly number[], from: number, restMm: number): void {
  let above = Math.max(from, firstAtLeast(sizesMm, restMm)), below = above - 1
  for (;;) {
    const overMm = above < sizesMm.length ? sizesMm[above]! - restMm : Infinity, underMm = below >= from ? restMm - sizesMm[below]! : Infinity
    if (Math.min(overMm, underMm) > best.withinMm) return
    best.offer([...taken, overMm < underMm ? above++ : below--].map((g) => groups[g]!))
  }
}

/** The best fills so far, in order, and how far off one may be to come among them. */
class BestOf {
  readonly fills: Fill[] = []
  withinMm: number
  readonly #targetMm: number
  readonly #most: number

  constructor(targetMm: number, toleranceMm: number, most: number) {
    this.#targetMm = targetMm
    this.#most = most
    this.withinMm = toleranceMm + touchMm
  }

  /** Groups whose sizes add to nearly the target, one entry for each piece. */
  offer(groups: readonly Group[]): void {
    const totalMm = groups.reduce((sum, group) => sum + group.sizeMm, 0), errorMm = totalMm - this.#targetMm
    for (const pieces of idListsOf(groups)) {
      const fill = { ids: pieces.map((piece) => piece.id), sizesMm: pieces.map((piece) => piece.sizeMm), totalMm, errorMm }
      const at = this.fills.findLastIndex((other) => inOrder(other, fill) <= 0) + 1
      if (at >= this.#most) return
      this.fills.splice(at, 0, fill)
      if (this.fills.length > this.#most) this.fills.pop()
      if (this.fills.length === this.#most) this.withinMm = Math.min(this.withinMm, Math.abs(this.fills.at(-1)!.errorMm) + touchMm)
    }
  }
}

function inOrder(a: Fill, b: Fill): number {
  const nearer = lengthClassOf(Math.abs(a.errorMm)) - lengthClassOf(Math.abs(b.errorMm))
  if (nearer !== 0) return nearer
  const differs = a.ids.findIndex((id, k) => id !== b.ids[k])
  return differs === -1 ? 0 : byText(a.ids[differs]!, b.ids[differs]!)
}
