import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'
import type { Use } from '#model/wishes.ts'
import { type Mates, matesOf } from '#engine/inspect/mates.ts'
import { differenceUUm, type MeasuredBar } from '#engine/inspect/measured-bar.ts'
import { type UseLimits, usesProved, type UseVerdict } from '#engine/inspect/uses-proved.ts'
import { worstUses } from '#engine/inspect/worst-uses.ts'
import { commonGuardFactor } from '#engine/inspect/verdict.ts'

/** As many pairs as keep within a difference, or two bars for each of several vises, all as equal as they can be. */
export type MatesWish = { readonly want: 'pairs'; readonly withinUm: number } | { readonly want: 'row'; readonly vises: number }

export type MatesProposal = {
  readonly bars: readonly [string, string]
  /** The second is to be turned end for end. */
  readonly turnOne: boolean
  /** Largest difference at a place, that way round. */
  readonly worstUm: number
  readonly uUm: number | null
  readonly provedToUm: number | null
  /** For each use the worst of the difference and of both bars' own parallelism; empty where an uncertainty is not known. */
  readonly uses: readonly UseVerdict[]
  readonly because: readonly Finding[]
}

export type MatesOfRack = {
  /** Best pair first. */
  readonly groups: readonly MatesProposal[]
  /** Of a row: highest less lowest over all places of all its bars, and what that proves. */
  readonly row: { readonly spreadUm: number; readonly uUm: number | null; readonly provedToUm: number | null; readonly uses: readonly UseVerdict[] } | null
  readonly leftOver: readonly string[]
  readonly findings: readonly Finding[]
}

/**
 * The best mates out of measured bars, whatever checks they were read in.
 *
 * Bars read at different places are compared on the line between their readings, at the least number of places any of them has; where
 * a bar's places are not known, all are compared by their mean heights, which is a finding.
 *
 * @param bars  in any order; the answer does not depend on it, ties apart
 * @throws Refusal `too-few-bars`; `size-not-positive` (withinUm, vises), `value-not-allowed` (vises)
 */
export function proposeMates(bars: readonly MeasuredBar[], wish: MatesWish, limitsUm: UseLimits): MatesOfRack {
  refuseUnfit(bars, wish)
  const sorted = bars.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  const flat = sorted.some(({ profile }) => profile.length < 2), rows = profilesUm(sorted, flat)
  const { groups, row } = wish.want === 'row' ? rowOf(sorted, rows, wish.vises) : { groups: pairsWithin(rows, wish.withinUm), row: null }
  const proposals = groups.map((mates) => proposalFrom(sorted, mates, limitsUm, flat)), taken = new Set(proposals.flatMap((one) => one.bars))
  return {
    groups: proposals, leftOver: sorted.flatMap(({ id }) => (taken.has(id) ? [] : [id])),
    row: row && { ...row, provedToUm: row.uUm === null ? null : row.spreadUm + commonGuardFactor * row.uUm, uses: row.uUm === null ? [] : usesProved(row.spreadUm, row.uUm, limitsUm) },
    findings: flat ? [{ code: 'mates-by-mean-height', facts: { bar: sorted.flatMap(({ id, profile }) => (profile.length < 2 ? [id] : [])) } }] : [],
  }
}

/** The most pairs whose worst still keeps within a difference. */
function pairsWithin(rows: readonly (readonly number[])[], withinUm: number): readonly Mates[] {
  let found: readonly Mates[] = [], few = 0, many = Math.floor(rows.length / 2)
  while (few < many) {
    const k = Math.ceil((few + many) / 2), answer = matesOf({ kind: 'profile', profiles: rows, k })
    if ('worst' in answer && answer.worst <= withinUm + equalUm) { few = k; found = answer.groups } else many = k - 1
  }
  return found
}

/** µm. The rounding of differences. */
const equalUm = 1e-9

function rowOf(bars: readonly MeasuredBar[], rows: readonly (readonly number[])[], vises: number) {
  const answer = matesOf({ kind: 'profile-window', profiles: rows, vises })
  if (!('spread' in answer)) throw new Error('a window has a spread')
  const us = answer.bars.flatMap((i) => answer.bars.flatMap((j) => (i < j ? [differenceUUm(bars[i]!, bars[j]!)] : [])))
  return { groups: answer.groups, row: { spreadUm: answer.spread, uUm: us.reduce<number | null>((most, u) => (u === null || most === null ? null : Math.max(most, u)), 0) } }
}

function proposalFrom(bars: readonly MeasuredBar[], { bars: [i, j], turnOne, cost }: Mates, limitsUm: UseLimits, flat: boolean): MatesProposal {
  const a = bars[i]!, b = bars[j]!, uUm = differenceUUm(a, b), uses = uUm === null ? [] : worstUses([usesProved(cost, uUm, limitsUm), a.uses, b.uses])
  const turned = turnOne && !flat
  return {
    bars: [a.id, b.id], turnOne: turned, worstUm: cost, uUm, provedToUm: uUm === null ? null : cost + commonGuardFactor * uUm, uses,
    because: [
      { code: 'mates-differ', facts: { bar: [a.id, b.id], worstUm: cost, turned } },
      ...(uUm === null ? [{ code: 'mates-uncertainty-not-known', facts: { bar: [a.id, b.id] } }] : []),
      ...(a.check === b.check ? [] : [{ code: 'mates-of-two-checks', facts: { bar: [a.id, b.id] } }]),
      ...(uses.length > 0 ? [{ code: 'mates-good-for', facts: { uses: provedOf(uses) } }] : []),
    ],
  }
}

const provedOf = (uses: readonly UseVerdict[]): readonly Use[] => uses.flatMap(({ use, verdict }) => (verdict === 'proved' ? [use] : []))

/** µm above the lowest bar, all at the same shares of their length. */
function profilesUm(bars: readonly MeasuredBar[], flat: boolean): readonly (readonly number[])[] {
  const lowestMm = Math.min(...bars.map(({ heightMm }) => heightMm)), um = (heightMm: number): number => Math.round((heightMm - lowestMm) * 1e9) / 1e6
  if (flat) return bars.map(({ heightMm }) => [um(heightMm)])
  const shares = sharesOf(bars)
  return bars.map((bar) => shares.map((share) => um(heightAt(bar, share * bar.lengthMm))))
}

/** Where all are compared, as shares of the length: at the readings where all were read alike, else spread evenly within what all were read over. */
function sharesOf(bars: readonly MeasuredBar[]): readonly number[] {
  const read = bars.map(({ profile, lengthMm }) => profile.map(([x]) => x / lengthMm)), [first] = read as [number[]]
  if (read.every((shares) => shares.length === first.length && shares.every((share, k) => Math.abs(share - first[k]!) < sameShare))) return first
  const count = Math.min(...read.map((shares) => shares.length)), from = Math.max(...read.map((shares) => shares[0]!)), to = Math.min(...read.map((shares) => shares.at(-1)!))
  // Symmetric about the middle, so that a bar turned end for end is compared at its own readings.
  const edge = Math.max(from, 1 - to)
  return Array.from({ length: count }, (_, k) => (edge < 0.5 ? edge + (k * (1 - 2 * edge)) / (count - 1) : from + (k * (to - from)) / (count - 1)))
}

/** Share of the length below which two places are one. */
const sameShare = 1e-3

/** On the straight line between the readings on either side; beyond the last reading as it was there. */
function heightAt({ profile }: MeasuredBar, xMm: number): number {
  const after = profile.findIndex(([x]) => x >= xMm)
  if (after <= 0) return (after === 0 ? profile[0]! : profile.at(-1)!)[1]
  const [x0, z0] = profile[after - 1]!, [x1, z1] = profile[after]!
  return z0 + ((z1 - z0) * (xMm - x0)) / (x1 - x0)
}

function refuseUnfit(bars: readonly MeasuredBar[], wish: MatesWish): void {
  const [field, given] = wish.want === 'row' ? ['vises', wish.vises] as const : ['withinUm', wish.withinUm] as const
  if (!(given > 0)) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  if (wish.want === 'row' && !Number.isInteger(wish.vises)) throw new Refusal('value-not-allowed', { field, given, needed: 'a whole number' })
  const needed = wish.want === 'row' ? 2 * wish.vises : 2
  if (bars.length < needed) throw new Refusal('too-few-bars', { field: 'bars', given: bars.length, needed })
}
