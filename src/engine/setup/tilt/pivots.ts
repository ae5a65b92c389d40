import { type Point, hullOf } from '#engine/setup/table/hull.ts'

/** A place that may carry the part, in the plan. */
export type Spot = { readonly xMm: number; readonly yMm: number }

/** Below this a point has no part in another: their places are in line, but for rounding. */
const leastWeight = 1e-9

/**
 * Which three points carry the load, as a walk: where another point sticks out above the plane of a triple it takes the place
 * of one of them, so that the load stays inside. Who goes depends on places alone, so each step is worked out once and looked
 * up in all later trials.
 *
 * Lists are flat, one row for each triple; a next of −1 is not worked out yet.
 */
export class Pivots {
  /** The points of each triple, and the factors of their heights in the plane's height at 0, 0 and in its slopes. */
  members = new Int32Array(0)
  inA = new Float64Array(0)
  inB = new Float64Array(0)
  inC = new Float64Array(0)
  next = new Int32Array(0)
  /** The triple that carried most often. */
  usual = 0
  #carried = new Int32Array(0)
  readonly #spots: readonly Spot[]
  readonly #load: Point
  readonly #known = new Map<string, number>()

  /** @param load  strictly inside the points, on no line through two of them */
  constructor(spots: readonly Spot[], load: Point) {
    this.#spots = spots
    this.#load = load
    this.#add(this.#firstTriple())
  }

  /** The triple after a point came in above the plane of this one. */
  step(triple: number, point: number): number {
    const members = [...this.members.subarray(3 * triple, 3 * triple + 3)], { xMm, yMm } = this.#spots[point]!
    const load = this.#weights(members, this.#load), entering = this.#weights(members, [xMm, yMm])
    let leaving = 0, least = Infinity
    entering.forEach((weight, k) => {
      if (weight > leastWeight && load[k]! / weight < least) { leaving = k; least = load[k]! / weight }
    })
    const to = this.#add(members.with(leaving, point))
    this.next[triple * this.#spots.length + point] = to
    return to
  }

  /** Keeps that a triple carried in one more trial. */
  count(triple: number): void {
    this.#carried[triple]! += 1
    if (this.#carried[triple]! > this.#carried[this.usual]!) this.usual = triple
  }

  /** How a spot is mixed from the points of a triple: weights that add to 1. */
  #weights(members: readonly number[], [x, y]: Point): readonly [number, number, number] {
    const [p, q, r] = members.map((i) => this.#spots[i]!) as [Spot, Spot, Spot]
    const [qx, qy, rx, ry, lx, ly] = [q.xMm - p.xMm, q.yMm - p.yMm, r.xMm - p.xMm, r.yMm - p.yMm, x - p.xMm, y - p.yMm], area = qx * ry - qy * rx
    const second = (lx * ry - ly * rx) / area, third = (qx * ly - qy * lx) / area
    return [1 - second - third, second, third]
  }

  #add(members: readonly number[]): number {
    const sorted = members.toSorted((a, b) => a - b), key = sorted.join(' '), known = this.#known.get(key)
    if (known !== undefined) return known
    const triple = this.#known.size, count = this.#spots.length
    this.#known.set(key, triple)
    if (3 * (triple + 1) > this.members.length) this.#grow(Math.max(16, 2 * triple))
    const at00 = this.#weights(sorted, [0, 0]), at10 = this.#weights(sorted, [1, 0]), at01 = this.#weights(sorted, [0, 1])
    for (const k of [0, 1, 2] as const) {
      this.members[3 * triple + k] = sorted[k]!
      this.inA[3 * triple + k] = at00[k]
      this.inB[3 * triple + k] = at10[k] - at00[k]
      this.inC[3 * triple + k] = at01[k] - at00[k]
    }
    this.next.fill(-1, triple * count, (triple + 1) * count)
    return triple
  }

  #grow(triples: number): void {
    const copy = <List extends Float64Array | Int32Array>(from: List, to: List): List => { to.set(from); return to }
    this.members = copy(this.members, new Int32Array(3 * triples))
    this.inA = copy(this.inA, new Float64Array(3 * triples))
    this.inB = copy(this.inB, new Float64Array(3 * triples))
    this.inC = copy(this.inC, new Float64Array(3 * triples))
    this.#carried = copy(this.#carried, new Int32Array(triples))
    this.next = copy(this.next, new Int32Array(triples * this.#spots.length))
  }

  /** Of the triangles from one corner of the outline to its sides, the one that the load is in. */
  #firstTriple(): readonly number[] {
    const corners = hullOf(this.#spots.map(({ xMm, yMm }) => [xMm, yMm] as const)).map(([x, y]) => this.#spots.findIndex(({ xMm, yMm }) => xMm === x && yMm === y))
    const triples = corners.slice(2).map((corner, k) => [corners[0]!, corners[k + 1]!, corner])
    return triples.reduce((best, triple) => (this.#inside(triple) > this.#inside(best) ? triple : best))
  }

  #inside(members: readonly number[]): number {
    return Math.min(...this.#weights(members, this.#load))
  }
}
