import { Refusal } from '#model/refusal.ts'
import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { type HeightWindow, isInside, type Ladder, ladderTo, rungsIn } from '#engine/rack/heights/ladder.ts'
import { fewestSingle, type SingleHeights } from '#engine/rack/heights/single.ts'
import { fewestStacked, type StackedHeights } from '#engine/rack/heights/stacked.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

export type HeightsAnswer = Ignored & {
  readonly single: SingleHeights | null
  readonly stackedDifferentOnly?: StackedHeights | null
  readonly stackedSameAllowed?: StackedHeights | null
  /** `window-between-heights`: windows that hold no height of the ladder, and none that is owned. */
  readonly findings: readonly Finding[]
  readonly sum: readonly Sum[]
}

type HeightsQuestion = {
  readonly windows: readonly HeightWindow[]
  readonly step: number
  readonly lowest: number
  readonly owned: readonly number[]
  readonly stacks: boolean
  readonly effortMillions: number
}

const mostWindows = 1000, mostOwned = 1000, mostRungs = 20_000
/** Enough for some twenty windows; beyond that the answer says what is proven. */
const commonEffortMillions = 40, mostEffortMillions = 10_000

/**
 * The calculation `heights`: one raw case in, its answer out. Heights are of any one unit; owned ones cost nothing.
 *
 * @throws Refusal with a malformed code, then `size-not-positive` (step, lowest, owned), `wish-negative` (effort), `too-many` (heights of the ladder)
 */
export function answerHeights(raw: unknown): HeightsAnswer {
  const { value: question, ignored } = readCase(raw, (object): HeightsQuestion => ({
    windows: object.pairs('windows', undefined, mostWindows), step: object.number('step'), lowest: object.number('lowest'),
    owned: object.has('owned') ? object.numbers('owned', undefined, mostOwned) : [], stacks: object.yesNoOr('stacks', true),
    effortMillions: object.numberOr('effortMillions', commonEffortMillions, mostEffortMillions),
  }))
  const { windows, stacks, effortMillions } = question, ladder = ladderFor(question), owned = [...new Set(question.owned)].sort((a, b) => a - b)
  const single = fewestSingle(ladder, windows, owned), stacked = (stacking: 'different' | 'same') => fewestStacked(ladder, windows, owned, stacking, effortMillions * 1e6)
  const answer = { single, ...(stacks ? { stackedDifferentOnly: stacked('different'), stackedSameAllowed: stacked('same') } : {}) }
  const between = windows.flatMap((window, k) => (holdsNone(ladder, window, owned) ? [k] : []))
  return {
    ...answer, findings: between.length === 0 ? [] : [{ code: 'window-between-heights', facts: { windows: between } }], ignored,
    sum: [
      { formula: 'heights-single', result: { name: 'single.count', value: single?.count ?? null }, inputs: { windows: windows.length, step: ladder.step }, sources: ['STABBING'] },
      ...(answer.stackedDifferentOnly === undefined ? [] : [sumOf('heights-different', 'stackedDifferentOnly', answer.stackedDifferentOnly, windows.length)]),
      ...(answer.stackedSameAllowed === undefined ? [] : [sumOf('heights-same', 'stackedSameAllowed', answer.stackedSameAllowed, windows.length)]),
    ],
  }
}

function ladderFor({ windows, step, lowest, owned, effortMillions }: HeightsQuestion): Ladder {
  const sizes = [['step', step] as const, ['lowest', lowest] as const, ...owned.map((height, k) => [`owned[${k}]`, height] as const)]
  for (const [field, given] of sizes) if (given <= touchMm) throw new Refusal('size-not-positive', { field, given, needed: { above: 0 } })
  if (effortMillions < 0) throw new Refusal('wish-negative', { field: 'effortMillions', given: effortMillions, needed: 0 })
  const ladder = ladderTo(lowest, step, windows)
  if (ladder.rungs > mostRungs) throw new Refusal('too-many', { field: 'step', given: ladder.rungs, needed: mostRungs })
  return ladder
}

function holdsNone(ladder: Ladder, window: HeightWindow, owned: readonly number[]): boolean {
  const { first, last } = rungsIn(ladder, window)
  return first > last && !owned.some((height) => isInside(ladder, window, height))
}

const sumOf = (formula: string, name: string, heights: StackedHeights | null, windows: number): Sum =>
  ({ formula, result: { name: `${name}.count`, value: heights?.count ?? null }, inputs: { windows, bound: heights?.bound ?? null }, sources: ['STABBING'] })
