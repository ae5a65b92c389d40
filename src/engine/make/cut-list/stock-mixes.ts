import type { Cover } from '#engine/make/cut-list/least-cover.ts'

/** How many of each, so that they cost exactly `cost` together and are worth at least `needed`; one mix after another. */
export function* stockMixes(covers: readonly Cover[], cost: number, needed: number): Generator<readonly number[]> {
  // from each place on, the most worth that a unit of cost can have
  const rates = covers.map((_, from) => Math.max(...covers.slice(from).map(({ worth, cost: each }) => worth / each)))
  const taken = covers.map(() => 0)
  function* go(at: number, left: number, worth: number): Generator<readonly number[]> {
    if (at === covers.length) {
      if (left === 0 && worth >= needed) yield [...taken]
      return
    }
    if (worth + left * rates[at]! * (1 + 1e-12) < needed) return
    const { cost: each, most, worth: of } = covers[at]!
    for (let times = Math.min(most, Math.floor(left / each)); times >= 0; times -= 1) {
      if (at === covers.length - 1 && times * each !== left) return
      taken[at] = times
      yield* go(at + 1, left - times * each, worth + times * of)
    }
  }
  yield* go(0, cost, 0)
}
