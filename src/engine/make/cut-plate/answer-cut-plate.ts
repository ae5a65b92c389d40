import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { cut, type CutState, type CutTools } from '#engine/make/cut-list/cut.ts'
import type { CutProblem } from '#engine/make/cut-list/cut-problem.ts'
import { cutFindings, type CutStatus, cutStatusOf } from '#engine/make/cut-list/cut-status.ts'
import { asGiven, mergedKinds } from '#engine/make/cut-list/given-kinds.ts'
import { wholeScale } from '#engine/make/cut-list/whole.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'

/** A strip across the whole plate, and the pieces side by side in it: length across the plate, height along it, how many. */
export type CutStrip = readonly [stripHeight: number, pieces: readonly (readonly [length: number, height: number, count: number])[]]

export type CutPlateAnswer = Ignored & {
  readonly status: CutStatus
  readonly leastPlateLength: number | null
  /** No shorter plate does. */
  readonly bound: number | null
  readonly strips: number
  readonly plan: readonly CutStrip[]
  readonly findings: readonly Finding[]
  readonly sum: readonly Sum[]
}

type CutPlateQuestion = {
  readonly plateWidth: number
  readonly kerf: number
  readonly pieces: readonly { readonly length: number; readonly height: number; readonly count: number }[]
  readonly secondsMost: number
}

const mostKinds = 500, mostPieces = 20_000, mostLength = 1e7
const commonSeconds = 10, mostSeconds = 600

/** The calculation `cut-plate`: one raw case in, its answer out. @throws Refusal as `runCutPlate` */
export function answerCutPlate(raw: unknown, tools: CutTools): CutPlateAnswer {
  const run = runCutPlate(raw, tools)
  for (;;) {
    const next = run.next()
    if (next.done === true) return next.value
  }
}

/**
 * All pieces out of one plate of the least length, cut into strips across its whole width first; a piece may be lower than its strip. Gives the answer
 * as it stands every now and then; who does not ask for more has stopped it.
 *
 * A strip is a stock length as long as the plate is wide that takes pieces no higher than itself and costs its height and one cut.
 *
 * @throws Refusal with a malformed code, then `size-not-positive`, `wish-negative`, `too-many`, `length-too-fine`, `piece-wider-than-plate`
 */
export function* runCutPlate(raw: unknown, tools: CutTools): Generator<CutPlateAnswer, CutPlateAnswer> {
  const { value: question, ignored } = readCase(raw, (object): CutPlateQuestion => ({
    plateWidth: object.number('plateWidth', mostLength), kerf: object.numberOr('kerf', 0, mostLength), secondsMost: object.numberOr('secondsMost', commonSeconds, mostSeconds),
    pieces: object.list('pieces', (one) => ({ length: one.number('length', mostLength), height: one.number('height', mostLength), count: one.count('count') }), mostKinds),
  }))
  const scale = scaleFor(question), whole = (length: number) => Math.round(length * scale), kerf = whole(question.kerf), { pieces } = question
  const given = mergedKinds(pieces.map(({ length, height, count }) => ({ size: whole(length) + kerf, count, key: `${length}x${height}` })))
  const heightOf = (kind: number) => whole(pieces[given.kinds[kind]!.given[0]!]!.height)
  const heights = [...new Set(given.kinds.map((_, kind) => heightOf(kind)))].sort((a, b) => b - a)
  const problem: CutProblem = {
    kinds: given.kinds,
    stocks: heights.map((height) => ({ capacity: whole(question.plateWidth) + kerf, cost: height + kerf, most: Infinity, takes: given.kinds.map((_, kind) => heightOf(kind) <= height) })),
  }
  const answerOf = (state: CutState): CutPlateAnswer => ({ ...answerFor(question, state, given, { heights, kerf, scale }), ignored })
  const run = cut(problem, question.secondsMost, tools)
  for (;;) {
    const next = run.next()
    if (next.done === true) return answerOf(next.value)
    yield answerOf(next.value)
  }
}

function scaleFor({ plateWidth, kerf, pieces, secondsMost }: CutPlateQuestion): number {
  const sizes = [['plateWidth', plateWidth] as const, ...pieces.flatMap(({ length, height }, k) => [[`pieces[${k}].length`, length] as const, [`pieces[${k}].height`, height] as const])]
  for (const [field, given] of sizes) if (given <= 0) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  for (const [field, given] of [['kerf', kerf], ['secondsMost', secondsMost]] as const) if (given < 0) throw new Refusal('wish-negative', { field, given, needed: 0 })
  const all = pieces.reduce((sum, { count }) => sum + count, 0)
  if (all > mostPieces) throw new Refusal('too-many', { field: 'pieces', given: all, needed: mostPieces })
  pieces.forEach(({ length, count }, k) => { if (count > 0 && length > plateWidth) throw new Refusal('piece-wider-than-plate', { field: `pieces[${k}].length`, given: length, needed: plateWidth }) })
  return wholeScale([['kerf', kerf], ...sizes])
}

function answerFor(question: CutPlateQuestion, state: CutState, given: ReturnType<typeof mergedKinds>, { heights, kerf, scale }: { readonly heights: readonly number[]; readonly kerf: number; readonly scale: number }): Omit<CutPlateAnswer, 'ignored'> {
  const status = cutStatusOf(state), { pieces } = question, count = pieces.reduce((sum, one) => sum + one.count, 0)
  // the last strip needs no cut behind it
  const lengthOf = (cost: number) => Math.max(0, cost - kerf) / scale
  const leastPlateLength = state.plan && lengthOf(state.plan.cost), bound = state.bound === Infinity ? null : lengthOf(state.bound)
  const plan = asGiven(given, state.plan?.used ?? []).toSorted((a, b) => heights[b.stock]! - heights[a.stock]!).flatMap(({ stock, counts, times }) => {
    const inside = counts.flatMap((often, at) => (often > 0 ? [[pieces[at]!.length, pieces[at]!.height, often] as const] : []))
    return Array.from({ length: times }, (): CutStrip => [heights[stock]! / scale, inside])
  })
  return {
    status, leastPlateLength, bound, strips: plan.length, plan, findings: cutFindings(status, leastPlateLength, bound),
    sum: [{ formula: 'cut-plate-length', result: { name: 'leastPlateLength', value: leastPlateLength }, inputs: { pieceCount: count, bound }, sources: ['CUT-PATTERNS'] }],
  }
}
