import { fewestRuns } from '#engine/setup/many/runs.ts'

/** A pair to take out of the rack, and for which operations (counted from 0), rising. */
export type Pulled = { readonly pair: number; readonly serves: readonly number[] }

export type PullList = {
  /** Pairs that serve every operation, in the order given. */
  readonly one: readonly number[]
  /** In the order in which they are wanted. */
  readonly pull: readonly Pulled[]
  /** Times another pair is put in. */
  readonly changes: number
  /** Operations that no pair serves. */
  readonly unserved: readonly number[]
}

/**
 * What to take out of the rack for operations in the order of the work: the fewest changes, and where a pair taken already
 * does again, no other.
 *
 * @param pairs    how many there are, in the order in which they are liked
 * @param serving  whether pair p serves operation k
 */
export function pullListOf(operations: number, pairs: number, serving: (p: number, k: number) => boolean): PullList {
  const runs = fewestRuns(operations, pairs, serving), pulled = new Map<number, number[]>()
  for (const { from, to, serve } of runs) {
    const pair = serve.find((p) => pulled.has(p)) ?? serve[0]
    if (pair === undefined) continue
    const serves = pulled.get(pair) ?? []
    for (let k = from; k <= to; k += 1) serves.push(k)
    pulled.set(pair, serves)
  }
  return {
    one: runs.length === 1 ? runs[0]!.serve : [],
    pull: [...pulled].map(([pair, serves]) => ({ pair, serves })),
    changes: Math.max(0, runs.length - 1),
    unserved: runs.flatMap(({ from, serve }) => (serve.length === 0 ? [from] : [])),
  }
}
