import { commonOf } from '#engine/make/cut-list/cut-problem.ts'

export type Cover = { readonly cost: number; readonly most: number; readonly worth: number }

/** Costs looked at one by one; where more would have to be, the bound is by shares. */
const mostCosts = 2_000_000

/**
 * The least cost above `above` that whole numbers of these have together while worth at least `needed`; Infinity where all of them are worth less.
 *
 * Exact where the costs have few enough common steps, else by shares of the last one, rounded down: then not more than the exact one.
 */
export function leastCover(covers: readonly Cover[], needed: number, above: number): number {
  // what is worth nothing is in no least cover, but may be in one that costs more than that
  const useful = covers.filter(({ worth, most }) => most > 0 && (worth > 0 || above >= 0))
  if (needed <= 0 && above < 0) return 0
  if (useful.reduce((sum, { worth, most }) => sum + (worth > 0 ? worth * most : 0), 0) < needed || useful.length === 0) return Infinity
  if (useful.length === 1) {
    const { cost, most, worth } = useful[0]!, times = Math.max(needed <= 0 ? 0 : Math.ceil(needed / worth), Math.floor(above / cost) + 1)
    return times <= most ? times * cost : Infinity
  }
  const step = useful.reduce((common, { cost }) => commonOf(common, cost), 0)
  const all = useful.toSorted((a, b) => b.worth / b.cost - a.worth / a.cost)
  let left = needed, shares = 0, most = 0
  for (const { cost, most: there, worth } of all) {
    const times = Math.min(there, left / worth)
    shares += times * cost
    most += Math.min(there, Math.ceil(left / worth)) * cost
    left -= times * worth
    if (left <= 0) break
  }
  const dearest = Math.max(...useful.map(({ cost }) => cost)), steps = Math.floor((Math.max(most, above + 1) + dearest) / step)
  if (steps > mostCosts) return Math.max(Math.ceil((shares * (1 - 1e-12)) / step) * step, above + 1)
  return exactly(useful.map((one) => ({ ...one, cost: one.cost / step })), needed, Math.floor(above / step), steps) * step
}

/** The same with costs that have no common step, none above `steps`. */
function exactly(covers: readonly Cover[], needed: number, above: number, steps: number): number {
  const worths = new Float64Array(steps + 1).fill(-1)
  worths[0] = 0
  for (const { cost, most, worth } of covers) {
    if (most === Infinity) {
      for (let c = cost; c <= steps; c += 1) if (worths[c - cost]! >= 0) worths[c] = Math.max(worths[c]!, worths[c - cost]! + worth)
      continue
    }
    let open = Math.min(most, Math.floor(steps / cost))
    for (let part = 1; open > 0; open -= part, part *= 2) {
      const taken = Math.min(part, open), by = taken * cost
      for (let c = steps; c >= by; c -= 1) if (worths[c - by]! >= 0) worths[c] = Math.max(worths[c]!, worths[c - by]! + taken * worth)
    }
  }
  for (let c = Math.max(0, above + 1); c <= steps; c += 1) if (worths[c]! >= needed) return c
  return Infinity
}
