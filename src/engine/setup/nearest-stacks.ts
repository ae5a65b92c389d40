import { firstAbove } from '#engine/numeric/sorted.ts'
import { lengthClassTopMm } from '#engine/setup/order.ts'
import type { Stack } from '#engine/setup/stacking.ts'

/**
 * Gathers the stacks with the smallest losses until there are `most` that serve. Losses are classes of equal lengths.
 *
 * Whether a stack serves costs most to find out: it is asked only of those nearer than the farthest that counts. Those
 * just as far are put aside unasked; where they are more than worth sorting it is `crowded`, and they are given up.
 */
export class NearestStacks {
  readonly #most: number
  readonly #serves: (stack: Stack) => boolean
  readonly #losses: number[] = []
  /** Nearer than the farthest; they serve. */
  readonly nearer: Stack[] = []
  /** As far as the farthest; not asked. */
  equal: Stack[] = []
  crowded = false
  /** Loss of the last that counts; to begin with of the last that may. */
  farthest: number
  /** What lies beyond this loss, in mm, need not be taken. */
  reachMm: number

  constructor(most: number, farthest: number, serves: (stack: Stack) => boolean) {
    this.#most = most
    this.#serves = serves
    this.farthest = farthest
    this.reachMm = lengthClassTopMm(farthest)
  }

  isEmpty(): boolean {
    return this.nearer.length === 0 && this.equal.length === 0 && !this.crowded
  }

  take(stack: Stack, loss: number): void {
    if (loss > this.farthest) return
    if (loss === this.farthest) {
      if (this.crowded) return
      this.equal.push(stack)
      if (this.equal.length <= worthSorting) return
      this.crowded = true
      this.equal = []
      this.reachMm = lengthClassTopMm(loss - 1)
    } else if (this.#serves(stack)) this.#insert(stack, loss)
  }

  #insert(stack: Stack, loss: number): void {
    const at = firstAbove(this.#losses, loss)
    this.nearer.splice(at, 0, stack)
    this.#losses.splice(at, 0, loss)
    if (this.nearer.length < this.#most) return
    const farthest = this.#losses.at(-1)!, first = this.#losses.indexOf(farthest)
    this.equal = this.nearer.splice(first)
    this.#losses.length = first
    this.crowded = false
    this.farthest = farthest
    this.reachMm = lengthClassTopMm(farthest)
  }
}

const worthSorting = 4000
