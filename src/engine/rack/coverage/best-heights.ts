/** Candidates, each with the setups it would serve, and how often each setup comes. */
export type Candidates = { readonly serves: readonly (readonly number[])[]; readonly times: readonly number[] }

/** Candidates by their indexes, what they gain together, and the most that any so many could gain. */
export type BestHeights = { readonly chosen: readonly number[]; readonly gained: number; readonly bound: number }

/** Setups looked at in one search. Beyond it the best found is told with its bound. */
const mostWork = 20_000_000

/**
 * The `count` candidates that gain most setups together; fewer where no more gain anything.
 *
 * Exact: what a candidate adds never grows as others are taken, so the largest additions bound what is still possible.
 *
 * @source STABBING
 */
export function bestHeights({ serves, times }: Candidates, count: number): BestHeights {
  const covered = new Int32Array(times.length)
  let best: readonly number[] = [], most = 0, bound = 0, work = 0
  const go = (taken: readonly number[], gained: number, free: readonly number[]): void => {
    if (gained > most) [best, most] = [taken, gained]
    if (taken.length === count) return
    const adding = free.map((candidate) => ({ candidate, adds: addsOf(candidate) })).filter(({ adds }) => adds > 0).sort((a, b) => b.adds - a.adds || a.candidate - b.candidate)
    const left = count - taken.length
    for (const [k, { candidate }] of adding.entries()) {
      let possible = gained
      for (let next = k; next < k + left && next < adding.length; next += 1) possible += adding[next]!.adds
      if (possible <= most) return
      if (work > mostWork) {
        bound = Math.max(bound, possible)
        return
      }
      for (const setup of serves[candidate]!) covered[setup]! += 1
      go([...taken, candidate], gained + adding[k]!.adds, left === 1 ? [] : adding.slice(k + 1).map((one) => one.candidate))
      for (const setup of serves[candidate]!) covered[setup]! -= 1
    }
  }
  const addsOf = (candidate: number): number => {
    let adds = 0
    for (const setup of serves[candidate]!) if (covered[setup] === 0) adds += times[setup]!
    work += serves[candidate]!.length
    return adds
  }
  go([], 0, [...serves.keys()])
  return { chosen: best.toSorted((a, b) => a - b), gained: most, bound: Math.max(bound, most) }
}
