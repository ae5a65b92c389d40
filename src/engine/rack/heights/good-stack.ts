import { type Effort, StackSearch } from '#engine/rack/heights/stack-search.ts'
import { reachWith, servedIn, type StackTables, without } from '#engine/rack/heights/stack-tables.ts'

/** Rungs that serve all, each the one that serves most of what is left, of equals the lowest; null where a window cannot be served. */
export function firstStack(tables: StackTables): readonly number[] | null {
  const { alone, everything, isOwned, rungs } = tables, reach = Uint32Array.from(alone), taken: number[] = []
  let open: Uint32Array = everything
  const take = (rung: number) => {
    open = without(tables, open, reach, rung)
    reachWith(tables, reach, reach, rung)
    taken.push(rung)
  }
  while (open.some((bits) => bits !== 0)) {
    let best = -1, most = 0
    for (let rung = 0; rung < rungs; rung += 1) {
      const gain = isOwned[rung] !== 0 || taken.includes(rung) ? 0 : servedIn(tables, open, reach, rung)
      if (gain > most) [best, most] = [rung, gain]
    }
    const next = best >= 0 ? [best] : twoFor(tables, open)
    if (next === null) return null
    for (const rung of next) take(rung)
  }
  return taken
}

/** The lowest two rungs that serve together the first window that is open. */
function twoFor({ spans, isOwned, rungs }: StackTables, open: Uint32Array): readonly [number, number] | null {
  const { first, last } = spans[spans.findIndex((_, w) => (open[w >>> 5]! & (1 << (w & 31))) !== 0)]!
  for (let lower = 0; lower < rungs; lower += 1) {
    for (let upper = Math.max(lower + 1, first - lower); upper < rungs && lower + upper <= last; upper += 1) {
      if (isOwned[lower] === 0 && isOwned[upper] === 0) return [lower, upper]
    }
  }
  return null
}

/** Rungs exchanged for fewer: two for one, then neighbours by threes and fours, as long as that goes or until the effort is spent. */
export function improvedStack(tables: StackTables, start: readonly number[], effort: Effort): readonly number[] {
  const search = new StackSearch(tables, effort)
  let best = start.toSorted((a, b) => a - b)
  for (;;) {
    const fewer = exchanged(search, best)
    if (fewer === null) return best
    best = fewer.toSorted((a, b) => a - b)
  }
}

function exchanged(search: StackSearch, rungs: readonly number[]): readonly number[] | null {
  for (const out of groupsOf(rungs)) {
    const kept = rungs.filter((rung) => !out.includes(rung)), put = search.complete(kept, out.length - 1)
    if (put === 'spent') return null
    if (put !== null) return [...kept, ...put]
  }
  return null
}

/** Each two; then each three and four next to one another. */
function* groupsOf(rungs: readonly number[]): Generator<readonly number[], void> {
  for (const [k, one] of rungs.entries()) for (const other of rungs.slice(k + 1)) yield [one, other]
  for (const size of [3, 4]) for (let k = 0; k + size <= rungs.length; k += 1) yield rungs.slice(k, k + size)
}
