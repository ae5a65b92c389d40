import { isNothing, isPattern, isSlack, nothing, patternOf, rowOf, slackOf, takenBack } from '#engine/make/cut-list/basic-column.ts'
import type { CutProblem, Pattern } from '#engine/make/cut-list/cut-problem.ts'
import { invert } from '#engine/make/cut-list/invert.ts'

/** Reduced costs nearer to 0 than this count as none; costs are at most 1. */
export const costSlack = 1e-7
/** Counts are taken this much apart from whole ones, each by its own share, so that no two rows leave at once and the steps do not run in circles. */
const apart = 1e-6
const pivotLeast = 1e-9
/** Cost of what must not be used. */
const forbiddenCost = 100
const refreshEvery = 400
/** Steps after which it is given up, lest it run in circles. */
const stepsMost = 50_000

/**
 * Linear programme of the patterns known so far: how often each is cut, fractions allowed, so that every piece is made and no more
 * stock is used than there is, at least cost. Costs are taken as shares of the dearest stock.
 *
 * Primal simplex with the inverse of the basis. A piece may at first be made of nothing at a forbidden cost, so that there is always a basis.
 * Fixing a pattern keeps the basis: where more is fixed than the solution has, the surplus is taken back by a column of its own at
 * a forbidden cost, which the next steps drive out.
 *
 * One simplex, one file: every method works on the same basis, its inverse and its values, which nobody else may see.
 */
export class Master {
  readonly rows: number
  readonly duals: Float64Array
  readonly patterns: Pattern[]
  readonly #kinds: number
  /** Row of a stock that is limited, −1 of one that is not. */
  readonly #stockRows: readonly number[]
  readonly #shares: readonly number[]
  readonly #isBanned: boolean[]
  /** Kinds of which nothing is left to be cut: what is apart in their row then costs nothing. */
  readonly #isClosed: Uint8Array
  readonly #weights: number[]
  readonly #slackWeights: Float64Array
  readonly #right: Float64Array
  readonly #inverse: Float64Array
  readonly #values: Float64Array
  /** The column that is basic in each row. */
  readonly #basis: Int32Array
  /** Places in a row of the inverse that are not 0; room to work in. */
  readonly #filled: Int32Array
  /** How the basic values change with what comes in; room to work in. */
  readonly #column: Float64Array
  #sinceRefresh = 0

  constructor(problem: CutProblem, from?: Master) {
    if (from) {
      this.#filled = from.#filled; this.#column = from.#column
      this.rows = from.rows; this.#kinds = from.#kinds; this.#stockRows = from.#stockRows; this.#shares = from.#shares
      this.duals = from.duals.slice(); this.patterns = [...from.patterns]; this.#isBanned = [...from.#isBanned]; this.#isClosed = from.#isClosed.slice()
      this.#weights = [...from.#weights]; this.#slackWeights = from.#slackWeights.slice()
      this.#right = from.#right.slice(); this.#inverse = from.#inverse.slice(); this.#values = from.#values.slice(); this.#basis = from.#basis.slice()
      this.#sinceRefresh = from.#sinceRefresh
      return
    }
    const { kinds, stocks } = problem, dearest = Math.max(...stocks.map(({ cost }) => cost))
    let row = kinds.length
    this.#kinds = kinds.length
    this.#stockRows = stocks.map(({ most }) => (most === Infinity ? -1 : row++))
    this.#shares = stocks.map(({ cost }) => cost / dearest)
    this.rows = row
    this.patterns = []
    this.#isBanned = []
    this.#isClosed = new Uint8Array(row)
    this.#weights = []
    this.#slackWeights = new Float64Array(row).fill(1)
    this.#right = Float64Array.from([...kinds.map(({ count }, k) => count + apart * (1 + ((k * 0.618033988749895) % 1))), ...stocks.filter(({ most }) => most !== Infinity).map(({ most }) => most)])
    this.#values = this.#right.slice()
    this.#inverse = new Float64Array(row * row)
    this.#filled = new Int32Array(row)
    this.#column = new Float64Array(row)
    for (let r = 0; r < row; r += 1) this.#inverse[r * row + r] = 1
    this.#basis = Int32Array.from({ length: row }, (_, r) => (r < kinds.length ? nothing(r) : slackOf(r)))
    this.duals = new Float64Array(row)
  }

  add(pattern: Pattern): void {
    this.patterns.push(pattern)
    this.#isBanned.push(false)
    this.#weights.push(1)
  }

  /** How often each basic pattern is cut, and its place. */
  basic(): { readonly at: number; readonly value: number }[] {
    const found: { at: number; value: number }[] = []
    for (let r = 0; r < this.rows; r += 1) if (isPattern(this.#basis[r]!)) found.push({ at: this.#basis[r]!, value: this.#values[r]! })
    return found
  }

  /** Cost so far, in shares of the dearest stock. */
  cost(): number {
    let sum = 0
    for (let r = 0; r < this.rows; r += 1) sum += this.#costOf(this.#basis[r]!) * this.#values[r]!
    return sum
  }

  /** What a pattern would have to be worth by the duals to be taken. */
  priceOf(stock: number): number {
    if (stock < 0) return 0
    const row = this.#stockRows[stock]!
    return this.#shares[stock]! - (row < 0 ? 0 : this.duals[row]!)
  }

  /** Takes a pattern out of the question so many times. */
  fix(at: number, times: number): void {
    this.#each(at, (row, times1) => { this.#right[row]! -= times * times1 })
    let left = times
    for (let r = 0; r < this.rows; r += 1) {
      if (this.#basis[r] !== at) continue
      this.#values[r]! -= times
      left = 0
      if (this.#values[r]! < -1e-9) this.#takeBack(r)
      else if (this.#values[r]! < 0) this.#values[r] = 0
    }
    if (left > 0) this.#refresh()
  }

  /** No longer takes patterns that hold more of a kind than is still to be cut, or stock that is used up. */
  banWhere(isBanned: (pattern: Pattern) => boolean): void {
    this.patterns.forEach((pattern, at) => { this.#isBanned[at] = this.#isBanned[at]! || isBanned(pattern) })
  }

  close(kind: number): void {
    this.#isClosed[kind] = 1
  }

  /** Simplex over the known patterns. Duals are then those of the best solution. False: broken off. */
  solve(isLate: () => boolean): boolean {
    this.#price()
    for (let step = 1; step <= stepsMost; step += 1) {
      if (step % 64 === 0 && isLate()) return false
      if (this.#sinceRefresh >= refreshEvery) {
        this.#refresh()
        this.#price()
      }
      const entering = this.#entering()
      if (entering === null) return true
      if (!this.#pivot(entering)) return false
    }
    return false
  }

  #price(): void {
    const { rows, duals } = this
    duals.fill(0)
    for (let r = 0; r < rows; r += 1) {
      const cost = this.#costOf(this.#basis[r]!), from = r * rows
      if (cost !== 0) for (let j = 0; j < rows; j += 1) duals[j]! += cost * this.#inverse[from + j]!
    }
  }

  #entering(): { readonly basic: number; readonly reduced: number } | null {
    let best = 0, entering: number | null = null, least = 0
    for (let at = 0; at < this.patterns.length; at += 1) {
      if (this.#isBanned[at]) continue
      const { stock, kinds, counts } = this.patterns[at]!
      let reduced = this.priceOf(stock)
      for (let k = 0; k < kinds.length; k += 1) reduced -= this.duals[kinds[k]!]! * counts[k]!
      if (reduced < -costSlack && reduced * reduced > best * this.#weights[at]!) { best = (reduced * reduced) / this.#weights[at]!; entering = at; least = reduced }
    }
    for (let r = 0; r < this.rows; r += 1) {
      const reduced = r < this.#kinds ? this.duals[r]! : -this.duals[r]!
      if (reduced < -costSlack && reduced * reduced > best * this.#slackWeights[r]!) { best = (reduced * reduced) / this.#slackWeights[r]!; entering = slackOf(r); least = reduced }
      const free = -this.duals[r]!
      if (this.#isClosed[r] === 1 && free < -costSlack && free * free > best * this.#slackWeights[r]!) { best = (free * free) / this.#slackWeights[r]!; entering = nothing(r); least = free }
    }
    return entering === null ? null : { basic: entering, reduced: least }
  }

  #pivot(entering: { readonly basic: number; readonly reduced: number }): boolean {
    const { rows } = this, inverse = this.#inverse, values = this.#values, column = this.#column.fill(0)
    this.#each(entering.basic, (row, times) => { for (let r = 0; r < rows; r += 1) column[r]! += times * inverse[r * rows + row]! })
    let out = -1, least = Infinity
    for (let r = 0; r < rows; r += 1) {
      if (column[r]! <= pivotLeast) continue
      const ratio = Math.max(0, values[r]!) / column[r]!
      if (ratio < least - 1e-12 || (ratio <= least + 1e-12 && this.#leavesBefore(r, out, column))) { least = Math.min(least, ratio); out = r }
    }
    if (out < 0) return false
    const pivot = column[out]!, from = out * rows
    const filled = this.#filled
    let count = 0
    for (let j = 0; j < rows; j += 1) {
      const value = inverse[from + j]!
      if (Math.abs(value) < 1e-14) { inverse[from + j] = 0; continue }
      inverse[from + j] = value / pivot
      filled[count] = j
      count += 1
    }
    this.#weigh(entering.basic, this.#basis[out]!, from, pivot)
    for (let r = 0; r < rows; r += 1) {
      const times = column[r]!
      if (r === out || Math.abs(times) < 1e-13) continue
      const to = r * rows
      for (let f = 0; f < count; f += 1) { const j = filled[f]!; inverse[to + j]! -= times * inverse[from + j]! }
      values[r]! -= times * least
      if (values[r]! < 0) values[r] = 0
    }
    values[out] = least
    this.#basis[out] = entering.basic
    for (let j = 0; j < rows; j += 1) this.duals[j]! += entering.reduced * inverse[from + j]!
    this.#sinceRefresh += 1
    return true
  }

  /** Devex: how far a step along each column goes, roughly, so that long ones are not taken for good ones. */
  #weigh(entering: number, leaving: number, from: number, pivot: number): void {
    const inverse = this.#inverse, weight = isPattern(entering) ? this.#weights[entering]! : this.#slackWeights[rowOf(entering)]!
    for (let at = 0; at < this.patterns.length; at += 1) {
      if (this.#isBanned[at]) continue
      const { stock, kinds, counts } = this.patterns[at]!, stockRow = this.#stockRows[stock] ?? -1
      let share = stockRow < 0 ? 0 : inverse[from + stockRow]!
      for (let k = 0; k < kinds.length; k += 1) share += inverse[from + kinds[k]!]! * counts[k]!
      this.#weights[at] = Math.max(this.#weights[at]!, share * share * weight)
    }
    for (let r = 0; r < this.rows; r += 1) {
      this.#slackWeights[r] = Math.max(this.#slackWeights[r]!, inverse[from + r]! * inverse[from + r]! * weight)
    }
    const left = Math.max(weight / (pivot * pivot), 1)
    if (isPattern(leaving)) this.#weights[leaving] = left
    else if (isSlack(leaving)) this.#slackWeights[rowOf(leaving)] = left
  }

  /** Among rows that leave at once: what is forbidden first, then the surest pivot. */
  #leavesBefore(r: number, out: number, column: Float64Array): boolean {
    if (out < 0) return true
    const forbids = (row: number) => (this.#costOf(this.#basis[row]!) >= forbiddenCost ? 1 : 0)
    return forbids(r) - forbids(out) > 0 || (forbids(r) === forbids(out) && column[r]! > column[out]!)
  }

  #takeBack(r: number): void {
    const { rows } = this
    this.#values[r] = -this.#values[r]!
    this.#basis[r] = takenBack(this.#basis[r]!)
    for (let j = 0; j < rows; j += 1) this.#inverse[r * rows + j] = -this.#inverse[r * rows + j]!
  }

  #costOf(basic: number): number {
    if (isPattern(basic)) return this.#isBanned[basic] ? forbiddenCost : (this.#shares[this.patterns[basic]!.stock] ?? 0)
    return isSlack(basic) || (isNothing(basic) && this.#isClosed[rowOf(basic)] === 1) ? 0 : forbiddenCost
  }

  /** The entries of a column. */
  #each(basic: number, take: (row: number, times: number) => void): void {
    if (isNothing(basic) || isSlack(basic)) {
      const row = rowOf(basic)
      take(row, isSlack(basic) && row < this.#kinds ? -1 : 1)
      return
    }
    const sign = isPattern(basic) ? 1 : -1, { stock, kinds, counts } = this.patterns[patternOf(basic)]!
    for (let k = 0; k < kinds.length; k += 1) take(kinds[k]!, sign * counts[k]!)
    if (stock >= 0 && this.#stockRows[stock]! >= 0) take(this.#stockRows[stock]!, sign)
  }

  /** The inverse anew, from the basis. */
  #refresh(): void {
    const { rows } = this, basis = new Float64Array(rows * rows), inverse = this.#inverse
    for (let r = 0; r < rows; r += 1) this.#each(this.#basis[r]!, (row, times) => { basis[row * rows + r]! += times })
    invert(basis, inverse, rows)
    for (let r = 0; r < rows; r += 1) {
      let value = 0
      for (let j = 0; j < rows; j += 1) value += inverse[r * rows + j]! * this.#right[j]!
      this.#values[r] = value
      if (value >= 0) continue
      if (value < -1e-7 && isPattern(this.#basis[r]!)) this.#takeBack(r)
      else this.#values[r] = 0
    }
    this.#sinceRefresh = 0
  }
}
