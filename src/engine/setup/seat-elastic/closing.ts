import { balanceOf, type ElasticQuestion, reachOf } from '#engine/setup/seat-elastic/springs.ts'
import { gapsOf } from '#engine/setup/seat/plane.ts'

/**
 * The down-force that would close every gap: an upper bound, for jaws, bed and part give as well. Null where no force up to a
 * meganewton does: the load stands so far aside that pressing lifts the other side.
 */
export type Closing = { readonly forceN: number | null; readonly gapUm: number }

const leastN = 1e-3, mostN = 1e6

/** @param gapUm  the largest gap there is to close */
export function closingOf(question: ElasticQuestion, gapUm: number): Closing {
  if (reachOf(question) !== 'inside') return { forceN: null, gapUm }
  const isClosed = (forceN: number): boolean => gapsOf(balanceOf({ ...question, forceN }).plane, question.springs).every((gap) => gap <= 0)
  let open = leastN, closed = leastN
  while (!isClosed(closed)) {
    if (closed >= mostN) return { forceN: null, gapUm }
    open = closed
    closed = Math.min(mostN, closed * 2)
  }
  for (let k = 0; k < 40 && closed - open > 1e-9 * closed; k += 1) {
    const middle = (open + closed) / 2
    if (isClosed(middle)) closed = middle; else open = middle
  }
  return { forceN: closed, gapUm }
}
