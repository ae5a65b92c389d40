import { bitsIn, reachWith, servedIn, type StackTables } from '#engine/rack/heights/stack-tables.ts'

/** Rungs that, with those given, serve every window; null: there are none; `spent`: given up before that was known. */
export type Completion = readonly number[] | null | 'spent'

/** Work that may still be done, in numbers of 32 bits looked at: a measure that is the same on every machine. */
export type Effort = { left: number }

/**
 * Looks for so many more rungs that every window is served: exact, by taking or leaving one rung after another.
 *
 * At each step one window is looked at that is not served yet. Some rung to come serves it alone or with what was taken, or
 * two to come do together, of which one is the lower: so one of these rungs is taken, and each that was tried in vain
 * is left for good. Windows that no sum of two can share bound what so many rungs can still do: each new rung serves
 * those it reaches, each two new ones together at most one more.
 */
export class StackSearch {
  readonly #tables: StackTables
  readonly #effort: Effort
  readonly #levels: Level[] = []
  readonly #isLeft: Uint8Array

  constructor(tables: StackTables, effort: Effort) {
    this.#tables = tables
    this.#effort = effort
    this.#isLeft = Uint8Array.from(tables.isOwned)
  }

  /** Up to `more` rungs beside those `taken`. */
  complete(taken: readonly number[], more: number): Completion {
    const { rungs, words, everything, alone, isOwned } = this.#tables, start = this.#level(0)
    start.open.set(everything)
    start.reach.set(alone)
    this.#effort.left -= taken.length * rungs * words
    for (const rung of taken) {
      for (let v = 0; v < words; v += 1) start.open[v]! &= ~start.reach[rung * words + v]!
      reachWith(this.#tables, start.reach, start.reach, rung)
      this.#isLeft[rung] = 1
    }
    const found: number[] = [], ended = this.#go(0, more, found)
    this.#isLeft.set(isOwned)
    return ended === 'found' ? found.reverse() : ended === 'none' ? null : 'spent'
  }

  #level(depth: number): Level {
    const { rungs, words } = this.#tables
    return (this.#levels[depth] ??= { open: new Uint32Array(words), reach: new Uint32Array(rungs * words), gains: new Int32Array(rungs) })
  }

  #go(depth: number, more: number, found: number[]): 'found' | 'none' | 'spent' {
    const { open, reach } = this.#level(depth), { rungs, words } = this.#tables
    if (open.every((bits) => bits === 0)) return 'found'
    if (more === 0) return 'none'
    this.#effort.left -= rungs * words
    if (this.#effort.left < 0) return 'spent'
    if (more === 1) return this.#last(open, reach, found)
    const left = this.#leaveHopeless(depth, more), options = left === null ? [] : this.#options(depth)
    let ended: 'found' | 'none' | 'spent' = 'none'
    for (const rung of options) {
      const next = this.#level(depth + 1)
      for (let v = 0; v < words; v += 1) next.open[v] = open[v]! & ~reach[rung * words + v]!
      reachWith(this.#tables, reach, next.reach, rung)
      this.#isLeft[rung] = 1
      left!.push(rung)
      ended = this.#go(depth + 1, more - 1, found)
      if (ended === 'found') found.push(rung)
      if (ended !== 'none') break
    }
    for (const rung of left ?? []) this.#isLeft[rung] = 0
    return ended
  }

  /** One rung that serves all that is open. */
  #last(open: Uint32Array, reach: Uint32Array, found: number[]): 'found' | 'none' {
    const { rungs, words } = this.#tables
    for (let rung = 0; rung < rungs; rung += 1) {
      let v = 0
      while (v < words && (open[v]! & ~reach[rung * words + v]!) === 0) v += 1
      if (v === words && this.#isLeft[rung] === 0) {
        found.push(rung)
        return 'found'
      }
    }
    return 'none'
  }

  /** Leaves the rungs that cannot be among `more` that serve all; null where no `more` rungs can. */
  #leaveHopeless(depth: number, more: number): number[] | null {
    const { open, reach, gains } = this.#level(depth), { rungs } = this.#tables
    const apart = this.#apart(open), needed = count(apart) - (more * (more - 1)) / 2
    const most: number[] = Array.from({ length: more }, () => 0)
    for (let rung = 0; rung < rungs; rung += 1) {
      const gain = this.#isLeft[rung] === 0 ? servedIn(this.#tables, apart, reach, rung) : 0
      gains[rung] = gain
      if (gain > most[more - 1]!) insert(most, gain)
    }
    const sum = most.reduce((total, gain) => total + gain, 0)
    if (sum < needed) return null
    const least = needed - sum + most[more - 1]!, left: number[] = []
    for (let rung = 0; rung < rungs; rung += 1) {
      if (this.#isLeft[rung] !== 0 || gains[rung]! >= least) continue
      this.#isLeft[rung] = 1
      left.push(rung)
    }
    return left
  }

  /** Open windows of which no sum of two rungs serves two, as a set. */
  #apart(open: Uint32Array): Uint32Array {
    const { spans } = this.#tables, apart = new Uint32Array(open.length)
    let last = -1
    for (let w = 0; w < spans.length; w += 1) {
      if ((open[w >>> 5]! & (1 << (w & 31))) === 0) continue
      const span = spans[w]!, isEmpty = span.first > span.last
      if (!isEmpty && span.first <= last) continue
      apart[w >>> 5]! |= 1 << (w & 31)
      if (!isEmpty) last = span.last
    }
    return apart
  }

  /** The fewest rungs of which one has to be taken, those that gain most first. */
  #options(depth: number): readonly number[] {
    const { open, gains } = this.#level(depth), { spans } = this.#tables
    const free: number[] = []
    for (let rung = 0; rung < this.#tables.rungs; rung += 1) if (this.#isLeft[rung] === 0) free.push(rung)
    let fewest: readonly number[] | null = null
    for (let w = 0; w < spans.length; w += 1) {
      if ((open[w >>> 5]! & (1 << (w & 31))) === 0) continue
      const options = this.#serving(depth, w, free, fewest?.length ?? Infinity)
      this.#effort.left -= free.length
      if (options !== null) fewest = options
      if (options?.length === 0) break
    }
    return fewest!.toSorted((a, b) => gains[b]! - gains[a]! || a - b)
  }

  /** Free rungs that serve a window now, and the lower of each two that do together; null where they are not fewer than `below`. */
  #serving(depth: number, w: number, free: readonly number[], below: number): readonly number[] | null {
    const { reach } = this.#level(depth), { words, spans } = this.#tables, { first, last } = spans[w]!, options: number[] = []
    const word = w >>> 5, bit = 1 << (w & 31), serves = (rung: number) => (reach[rung * words + word]! & bit) !== 0
    // as the lower one goes up, the least partner it needs comes down
    let partner = free.length
    for (const [k, rung] of free.entries()) {
      while (partner > 0 && free[partner - 1]! + rung >= first) partner -= 1
      const from = Math.max(partner, k + 1)
      if (serves(rung) || (from < free.length && free[from]! + rung <= last)) options.push(rung)
      if (options.length >= below) return null
    }
    return options
  }
}

/** One step of the search: windows not served yet, what each rung would serve, how many of those apart. */
type Level = { readonly open: Uint32Array; readonly reach: Uint32Array; readonly gains: Int32Array }

function insert(descending: number[], value: number): void {
  let k = descending.length - 1
  for (; k > 0 && descending[k - 1]! < value; k -= 1) descending[k] = descending[k - 1]!
  descending[k] = value
}

const count = (set: Uint32Array): number => set.reduce((sum, bits) => sum + bitsIn(bits), 0)
