import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { type CutBarsQuestion, readCutBars } from '#engine/make/cut-bars/read-cut-bars.ts'
import { cut, type CutState, type CutTools } from '#engine/make/cut-list/cut.ts'
import { cutFindings, type CutStatus, cutStatusOf } from '#engine/make/cut-list/cut-status.ts'
import { asGiven, mergedKinds } from '#engine/make/cut-list/given-kinds.ts'
import type { Ignored } from '#engine/read/read-case.ts'

/** One stock length, cut so: how many of each kind of piece, in the order they were given, and how often. */
export type CutBar = { readonly stockLength: number; readonly pieces: readonly number[]; readonly times: number }

export type CutBarsAnswer = Ignored & {
  readonly status: CutStatus
  /** Null where no plan was found. */
  readonly stockCount: number | null
  readonly leastStockLength: number | null
  /** Less than this cannot do: so many stock lengths where one length was asked about, else so much length; null where none does. */
  readonly bound: number | null
  readonly plan: readonly CutBar[]
  readonly findings: readonly Finding[]
  readonly sum: readonly Sum[]
}

/** The calculation `cut-bars`: one raw case in, its answer out. @throws Refusal as `readCutBars` */
export function answerCutBars(raw: unknown, tools: CutTools): CutBarsAnswer {
  const run = runCutBars(raw, tools)
  for (;;) {
    const next = run.next()
    if (next.done === true) return next.value
  }
}

/** The same, giving the answer as it stands every now and then; who does not ask for more has stopped it. */
export function* runCutBars(raw: unknown, tools: CutTools): Generator<CutBarsAnswer, CutBarsAnswer> {
  const { value: question, ignored } = readCutBars(raw), { kerf, pieces, stock, form } = question
  const given = mergedKinds(pieces.map(({ length, count }) => ({ size: length + kerf, count, key: String(length) })))
  const stocks = stock.map(({ length, most }) => ({ capacity: length + kerf, cost: form === 'count' ? 1 : length, most, takes: null }))
  const answerOf = (state: CutState) => ({ ...answerFor(question, state, given), ignored })
  const run = cut({ kinds: given.kinds, stocks }, question.secondsMost, tools)
  for (;;) {
    const next = run.next()
    if (next.done === true) return answerOf(next.value)
    yield answerOf(next.value)
  }
}

function answerFor({ form, scale, stock, pieces }: CutBarsQuestion, state: CutState, given: ReturnType<typeof mergedKinds>): Omit<CutBarsAnswer, 'ignored'> {
  const status = cutStatusOf(state), rows = asGiven(given, state.plan?.used ?? []), isCount = form === 'count'
  const stockCount = state.plan && rows.reduce((sum, { times }) => sum + times, 0)
  const leastStockLength = state.plan && rows.reduce((sum, row) => sum + row.times * stock[row.stock]!.length, 0) / scale
  const bound = state.bound === Infinity ? null : isCount ? state.bound : state.bound / scale, count = pieces.reduce((sum, one) => sum + one.count, 0)
  return {
    status, stockCount, leastStockLength, bound,
    plan: rows.map((row) => ({ stockLength: stock[row.stock]!.length / scale, pieces: row.counts, times: row.times })),
    findings: cutFindings(status, isCount ? stockCount : leastStockLength, bound),
    sum: [isCount
      ? { formula: 'cut-bars-count', result: { name: 'stockCount', value: stockCount }, inputs: { pieceCount: count, bound }, sources: ['CUT-PATTERNS'] }
      : { formula: 'cut-bars-length', result: { name: 'leastStockLength', value: leastStockLength }, inputs: { pieceCount: count, bound }, sources: ['CUT-PATTERNS'] }],
  }
}
