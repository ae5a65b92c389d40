import { putBack, takeKernel } from '#engine/kernel/kernel.ts'
import { KernelLists } from '#engine/kernel/lists.ts'
import { bytesForNormals, Normals } from '#engine/numeric/draw-normals.ts'
import type { Generator } from '#engine/numeric/generator.ts'

/** Values drawn at a time. */
const pieceLength = 4096

/** For tests and benches: fills any list with independent standard normal values, and leaves the generator where they end. */
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
