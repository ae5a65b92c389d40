import type { Pivots, Spot } from '#engine/setup/tilt/pivots.ts'

/** µm. What a point may stick out above the plane before it counts: far below any reading, above rounding. */
const unseenUm = 1e-9
/** A walk this long goes in a circle, among planes that only rounding tells apart: what counts is then ten times as much. */
const longWalk = 256
/** µm. Rounding never comes to as much. */
const mostUnseenUm = 1e-3

/**
 * The seats of many trials on points anywhere: from the triple that carries most often, from triple to triple, at the first
 * point that sticks out above the plane, until none does.
 *
 * @param heights  µm, pair of trials by pair, place by place
 */
export function walkTrials(pivots: Pivots, spots: readonly Spot[], heights: Float64Array, along: Float64Array, across: Float64Array): void {
  const n = spots.length, xs = Float64Array.from(spots, ({ xMm }) => xMm), ys = Float64Array.from(spots, ({ yMm }) => yMm)
  let { members, inA, inB, inC, next } = pivots
  for (let t = 0; t < along.length; t += 1) {
    const row = (t >> 1) * 2 * n + (t & 1)
    let triple = pivots.usual, a = 0, b = 0, c = 0, i = 0, left = -1, steps = 0, unseen = unseenUm
    while (left !== 0) {
      if (left < 0) {
        const m = 3 * triple, z0 = heights[row + 2 * members[m]!]!, z1 = heights[row + 2 * members[m + 1]!]!, z2 = heights[row + 2 * members[m + 2]!]!
        a = inA[m]! * z0 + inA[m + 1]! * z1 + inA[m + 2]! * z2
        b = inB[m]! * z0 + inB[m + 1]! * z1 + inB[m + 2]! * z2
        c = inC[m]! * z0 + inC[m + 1]! * z1 + inC[m + 2]! * z2
        left = n
      }
      left -= 1
      if (a + b * xs[i]! + c * ys[i]! - heights[row + 2 * i]! < -unseen) {
        const following = next[triple * n + i]!
        if (following === -1) { triple = pivots.step(triple, i); ({ members, inA, inB, inC, next } = pivots) } else triple = following
        left = -1
        steps += 1
        if (steps % longWalk === 0) unseen *= 10
        if (unseen > mostUnseenUm) throw new Error('the seat is not found')
      }
      i += 1
      if (i === n) i = 0
    }
    pivots.count(triple)
    along[t] = b; across[t] = c
  }
}
