import { byId } from '#engine/setup/by-id.ts'
import { fewestRuns } from '#engine/setup/many/runs.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** Heights that work, as of a window. */
export type Heights = { readonly lowMm: number; readonly highMm: number }

/** A pair by its height. */
export type HeightOfPair = { readonly id: string; readonly heightMm: number }

/** The windows of operations in the order of the work; `heights` null: whatever height is wanted can be had. */
export type ManyQuestion = { readonly windows: readonly Heights[]; readonly heights: readonly HeightOfPair[] | null }

/** Operations `from` to `to` (counted from 0) on one pair; `ids` all pairs that do, most grip first. */
export type ManyRun = Heights & { readonly from: number; readonly to: number; readonly ids: readonly string[] }

export type Many = {
  /** Pairs that serve all operations, most grip first. */
  readonly one: readonly string[]
  /** Heights that would serve all; null where there are none. */
  readonly oneMm: Heights | null
  readonly changes: number
  readonly runs: readonly ManyRun[]
  /** Operations that no pair serves, or whose window is empty: each is a run of its own. */
  readonly unserved: readonly number[]
}

/**
 * One pair for all operations of a part, or the fewest changes. Without heights a run goes on while its windows have a
 * height in common.
 *
 * @source SETUP-RULES
 */
export function manyOf({ windows, heights }: ManyQuestion): Many {
  // where windows have any height in common, they have one of their low ends in common
  const pairs = (heights ?? windows.map(({ lowMm }) => ({ id: '', heightMm: lowMm }))).toSorted((a, b) => a.heightMm - b.heightMm || byId(a, b))
  const plan = fewestRuns(windows.length, pairs.length, (p, k) => isInside(pairs[p]!.heightMm, windows[k]!))
  const runs = plan.map(({ from, to, serve }) => ({ from, to, ...commonOf(windows.slice(from, to + 1)), ids: heights === null ? [] : serve.map((p) => pairs[p]!.id) }))
  const all = commonOf(windows)
  return {
    one: runs.length === 1 ? runs[0]!.ids : [],
    oneMm: all.highMm < all.lowMm - touchMm ? null : all,
    changes: runs.length - 1,
    runs,
    unserved: plan.flatMap(({ from, serve }) => (serve.length === 0 ? [from] : [])),
  }
}

const commonOf = (windows: readonly Heights[]): Heights => ({
  lowMm: windows.reduce((most, { lowMm }) => Math.max(most, lowMm), -Infinity), highMm: windows.reduce((least, { highMm }) => Math.min(least, highMm), Infinity),
})

const isInside = (mm: number, { lowMm, highMm }: Heights): boolean => mm >= lowMm - touchMm && mm <= highMm + touchMm
