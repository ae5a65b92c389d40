import type { Kernel } from '#engine/kernel/kernel.ts'

/** Bytes of a pair of numbers, one for each of two trials: what the loops load at once. Every list begins at a multiple of it. */
export const pairBytes = 16

/** Lays lists one after the other into the memory of a kernel. Their contents may be anything. */
export class KernelLists {
  readonly kernel: Kernel
  #end = 0

  constructor(kernel: Kernel) {
    this.kernel = kernel
  }

  floats(length: number): Float64Array {
    return new Float64Array(this.kernel.memory.buffer, this.#next(8 * length), length)
  }

  words(length: number): Int32Array {
    return new Int32Array(this.kernel.memory.buffer, this.#next(4 * length), length)
  }

  unsignedWords(length: number): Uint32Array<ArrayBuffer> {
    return new Uint32Array(this.kernel.memory.buffer, this.#next(4 * length), length)
  }

  bytes(length: number): Uint8Array {
    return new Uint8Array(this.kernel.memory.buffer, this.#next(length), length)
  }

  #next(bytes: number): number {
    const at = this.#end
    this.#end = at + Math.ceil(bytes / pairBytes) * pairBytes
    return at
  }
}
