import type { Finding } from '#model/finding.ts'
import type { Situation } from '#model/situation.ts'
import type { Sum } from '#model/sum.ts'
import { blockOf, type BlockOrder } from '#engine/setup/block/block.ts'
import type { BlockQuestion } from '#engine/setup/block/block-question.ts'
import type { OrderName } from '#engine/setup/block/orders.ts'
import { readBlockCase } from '#engine/setup/block/read-block.ts'
import type { Ignored } from '#engine/read/read-case.ts'
import { rulesSources } from '#engine/setup/sum-sources.ts'

/** Both orders, each with what speaks for it. `situations`: which cautions belong beside the answer. */
export type BlockAnswer = Ignored & {
  readonly orders: readonly (BlockOrder & { readonly because: readonly Finding[] })[]
  readonly situations: readonly Situation[]
  readonly sum: readonly Sum[]
}

/** The calculation `block`: one raw case in, its answer out. @throws Refusal as `readBlockCase` */
export function answerBlock(raw: unknown): BlockAnswer {
  const { question, ignored } = readBlockCase(raw), orders = blockOf(question)
  return {
    orders: orders.map((order) => ({ ...order, because: [{ code: reasons[order.order], facts: {} }] })),
    situations: ['seating', 'rod', 'loose bar', 'handle off the vise', 'milling over bars'],
    ignored,
    sum: orders.flatMap((order, k) => sumOf(question, order, `orders[${k}]`)),
  }
}

const reasons: { readonly [order in OrderName]: string } = { 'one face stays': 'both-sides-from-one-face', 'roll round': 'each-face-from-the-last' }

/** Grip and stick-out of each step that has a seat. */
function sumOf({ vise }: BlockQuestion, { steps }: BlockOrder, path: string): readonly Sum[] {
  const { jawHeightMm, lowerJawHeightMm = jawHeightMm } = vise
  return steps.flatMap(({ seatMm, heightMm, gripMm, stickOutMm }, k): readonly Sum[] => {
    const sum = (formula: string, name: string, value: number | null, inputs: Sum['inputs']): Sum => ({ formula, result: { name: `${path}.steps[${k}].${name}`, value }, inputs, sources: rulesSources })
    return seatMm === null ? [] : [
      sum('grip-at-seat', 'gripMm', gripMm, { jawHeightMm: lowerJawHeightMm, seatMm, heightMm }),
      sum('stick-out-at-seat', 'stickOutMm', stickOutMm, { seatMm, heightMm, jawHeightMm }),
    ]
  })
}
