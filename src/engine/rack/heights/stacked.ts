import { firstStack, improvedStack } from '#engine/rack/heights/good-stack.ts'
import { heightOf, type HeightWindow, type Ladder, rungOf } from '#engine/rack/heights/ladder.ts'
import { fewestSingle, type HeightSet } from '#engine/rack/heights/single.ts'
import { StackSearch } from '#engine/rack/heights/stack-search.ts'
import { servingOf, type Stacking, stackTablesOf, type StackTables } from '#engine/rack/heights/stack-tables.ts'

/** `optimal`: fewer than `count` cannot do, and `bound` is `count`. `gap`: the search was ended; fewer than `bound` cannot do. */
export type StackedHeights = HeightSet & { readonly status: 'optimal' | 'gap'; readonly bound: number }

/**
 * The fewest heights of the ladder so that every window holds one height, or the sum of two on each other, owned ones
 * included; null where a window holds neither.
 *
 * A good set is found first; then it is shown, from none up, that fewer cannot do.
 *
 * @param owned   rising, each once
 * @param effort  how much work may go into it, as in `Effort`
 * @source STABBING
 */
export function fewestStacked(ladder: Ladder, windows: readonly HeightWindow[], owned: readonly number[], stacking: Stacking, effort: number): StackedHeights | null {
  const tables = stackTablesOf(ladder, windows, owned, stacking), start = firstStack(tables)
  if (start === null) return null
  const single = fewestSingle(ladder, tables.windows, owned)?.heights.map((height) => rungOf(ladder, height)) ?? start
  const { rungs, bound } = fewestRungs(tables, single.length < start.length ? single : start, effort)
  const heights = rungs.toSorted((a, b) => a - b).map((rung) => heightOf(ladder, rung)), had = [...owned, ...heights].sort((a, b) => a - b)
  return {
    count: heights.length, heights, served: windows.map((window) => servingOf(ladder, window, had, stacking)!),
    status: bound === heights.length ? 'optimal' : 'gap', bound,
  }
}

/** Share of the work that goes into a better set before anything is proven. */
const improvingShare = 0.25

function fewestRungs(tables: StackTables, start: readonly number[], effort: number): { readonly rungs: readonly number[]; readonly bound: number } {
  const better = improvedStack(tables, start, { left: effort * improvingShare }), search = new StackSearch(tables, { left: effort * (1 - improvingShare) })
  for (let more = 0; more < better.length; more += 1) {
    const rungs = search.complete([], more)
    if (rungs === 'spent') return { rungs: better, bound: more }
    if (rungs !== null) return { rungs, bound: more }
  }
  return { rungs: better, bound: better.length }
}
