import { byId } from '#engine/setup/by-id.ts'
import type { BlockQuestion, Rest } from '#engine/setup/block/block-question.ts'
import { endTurns, orderNames, ordersOfLongFaces, type OrderName, type Turn } from '#engine/setup/block/orders.ts'
import { holdingsOf, type Holding } from '#engine/setup/block/holdings.ts'
import { stepOf, type BlockStep } from '#engine/setup/block/step.ts'
import { fewestRuns } from '#engine/setup/many/runs.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

export type BlockOrder = {
  readonly order: OrderName
  readonly steps: readonly BlockStep[]
  /** Pairs that serve all four long faces, most grip first. */
  readonly one: readonly string[]
  /** Times another pair has to be put in, over all six faces. */
  readonly changes: number
}

/**
 * The six-side block in both orders: for each face what lies at the fixed jaw, whether a rod goes in, which heights work,
 * and with the fewest changes of pairs which pair carries it.
 *
 * @param question  raw no smaller than finished, the raw block between the jaws
 * @source SETUP-RULES
 */
export function blockOf(question: BlockQuestion): readonly BlockOrder[] {
  return orderNames.map((order) => orderOf(question, order, [...ordersOfLongFaces[order], ...endTurns]))
}

function orderOf(question: BlockQuestion, order: OrderName, turns: readonly Turn[]): BlockOrder {
  const holdings = holdingsOf(question, turns), rests = restsOf(question, holdings)
  const serves = (r: number, k: number): boolean => doesFor(question, rests[r]!, holdings[k]!)
  const runs = fewestRuns(holdings.length, rests.length, serves)
  const restAt = (k: number): Rest | null => rests[runs.find(({ from, to }) => from <= k && k <= to)!.serve[0] ?? -1] ?? null
  return {
    order,
    steps: holdings.map((holding, k) => stepOf(question, holding, restAt(k))),
    one: rests.flatMap(({ id }, r) => (id !== null && longFaces.every((k) => serves(r, k)) ? [id] : [])),
    changes: runs.length - 1,
  }
}

const longFaces = [0, 1, 2, 3]

/** The lowest pair first: most grip; the bed last. Where any height can be had, the low ends of the windows will do (as in `manyOf`). */
function restsOf({ heights }: BlockQuestion, holdings: readonly Holding[]): readonly Rest[] {
  const pairs: readonly Rest[] = heights?.toSorted(byId) ?? holdings.map(({ window }) => ({ id: null, heightMm: window.lowMm, thicknessMm: null }))
  return [...pairs.toSorted((a, b) => a.heightMm - b.heightMm), theBed]
}

const theBed: Rest = { id: null, heightMm: 0, thicknessMm: null }

/** An end stands on what keeps to the rules of thumb. The bare bed is for ends alone, unless nobody said which pairs there are. */
function doesFor({ heights, wishes }: BlockQuestion, { id, heightMm, thicknessMm }: Rest, { how, window, question: { part } }: Holding): boolean {
  if (heights !== null && id === null && how !== 'standing') return false
  const highMm = how === 'standing' ? window.advisedHighMm : window.highMm
  return heightMm >= window.lowMm - touchMm && heightMm <= highMm + touchMm && (thicknessMm === null || 2 * thicknessMm + wishes.gapMm <= part.betweenJawsMm! + touchMm)
}
