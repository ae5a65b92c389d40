import type { Kernel } from '#engine/kernel/kernel.ts'
import type { KernelLists } from '#engine/kernel/lists.ts'
import type { Generator } from '#engine/numeric/generator.ts'

/**
 * Independent standard normal values, into lists in the memory of a kernel.
 *
 * Bit for bit the same on every machine: nothing but + − × ÷, comparisons and tables made from them.
 *
 * @source ZIGGURAT
 */
export class Normals {
  /** What they are drawn from. Others may draw in between. */
  readonly generator: Generator
  readonly #kernel: Kernel
  readonly #tables: Uint8Array

  /** @param from  the state to go on from, which stays as it is */
  constructor(lists: KernelLists, from: Generator) {
    this.#kernel = lists.kernel
    this.generator = lists.unsignedWords(from.length)
    this.generator.set(from)
    this.#tables = lists.bytes(tableBytes)
    this.#tables.set(tables ??= tablesFrom(this.#kernel, this.#tables))
  }

  fill(into: Float64Array): void {
    this.#kernel.drawNormals(this.generator.byteOffset, this.#tables.byteOffset, into.byteOffset, into.byteLength)
  }
}

/** Of 256 layers: widths, edges, heights and places that are sure. */
const tableBytes = 8 * (256 + 257 + 257) + 4 * 256
/** Bytes that `Normals` needs at most. */
export const bytesForNormals = tableBytes + 32

/** Made once, copied for each that draws. */
let tables: Uint8Array | null = null

function tablesFrom(kernel: Kernel, into: Uint8Array): Uint8Array {
  kernel.makeNormalTables(into.byteOffset)
  return into.slice()
}
