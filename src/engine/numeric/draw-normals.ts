import { type Kernel, putBack, takeKernel } from '#engine/kernel/kernel.ts'
import { KernelLists } from '#engine/kernel/lists.ts'
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

/** Fills any list with independent standard normal values; see `Normals`. */
export function drawNormals(generator: Generator, into: Float64Array): void {
  const kernel = takeKernel(bytesForNormals + 8 * pieceLength), lists = new KernelLists(kernel), normals = new Normals(lists, generator), piece = lists.floats(pieceLength)
  for (let done = 0; done < into.length; done += pieceLength) {
    const part = piece.subarray(0, into.length - done)
    normals.fill(part)
    into.set(part, done)
  }
  generator.set(normals.generator)
  putBack(kernel)
}

/** Of 256 layers: widths, edges, heights and places that are sure. */
const tableBytes = 8 * (256 + 257 + 257) + 4 * 256
/** Bytes that `Normals` needs at most. */
export const bytesForNormals = tableBytes + 32
/** Values drawn at a time for a list of one's own. */
const pieceLength = 4096

/** Made once, copied for each that draws. */
let tables: Uint8Array | null = null

function tablesFrom(kernel: Kernel, into: Uint8Array): Uint8Array {
  kernel.makeNormalTables(into.byteOffset)
  return into.slice()
}
