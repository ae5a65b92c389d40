/** Operations one after another on the same pair, counted from 0, `to` included; `serve`: which pairs do for all of them. */
export type Run = { readonly from: number; readonly to: number; readonly serve: readonly number[] }

/**
 * The fewest runs that go through a sequence in order. Each run goes on as long as one pair still serves all of it, which
 * no other plan can better; what nothing serves stands alone, with nothing to serve it.
 *
 * @param pairs    how many there are
 * @param serving  whether pair p serves operation k
 */
export function fewestRuns(operations: number, pairs: number, serving: (p: number, k: number) => boolean): readonly Run[] {
  const runs: Run[] = [], every = [...Array.from({ length: pairs }).keys()]
  for (let from = 0; from < operations; ) {
    let to = from, serve = every.filter((p) => serving(p, from))
    for (; serve.length > 0 && to + 1 < operations; to += 1) {
      const still = serve.filter((p) => serving(p, to + 1))
      if (still.length === 0) break
      serve = still
    }
    runs.push({ from, to, serve })
    from = to + 1
  }
  return runs
}
