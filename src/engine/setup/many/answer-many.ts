import { Refusal } from '#model/refusal.ts'
import type { Sum } from '#model/sum.ts'
import { manyOf, type Heights, type Many, type ManyQuestion } from '#engine/setup/many/many.ts'
import { readHeight, refuseUnfitHeights } from '#engine/setup/many/read-heights.ts'
import { mostCuts } from '#engine/setup/read-cut.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { rulesSources } from '#engine/setup/sum-sources.ts'

/**
 * The calculation `setup-many`: one raw case in, its answer out. A window without any height (low above high) is taken: it
 * is unserved.
 *
 * @throws Refusal with a malformed code, then `size-not-positive` (a height), `bar-id-twice`, `too-few-windows`
 */
export function answerMany(raw: unknown): Many & Ignored & { readonly sum: readonly Sum[] } {
  const { value: question, ignored } = readCase(raw, (object): ManyQuestion => ({
    windows: object.list('windows', (window): Heights => ({ lowMm: window.number('lowMm'), highMm: window.number('highMm') }), mostCuts),
    heights: object.has('heights') ? object.list('heights', readHeight) : null,
  }))
  refuseUnfitHeights(question.heights ?? [])
  if (question.windows.length === 0) throw new Refusal('too-few-windows', { field: 'windows', given: 0, needed: 1 })
  const many = manyOf(question)
  return { ...many, ignored, sum: sumOf(question, many) }
}

/** The heights of each run: the highest low end of its windows to the lowest high end. */
function sumOf({ windows }: ManyQuestion, { runs, changes }: Many): readonly Sum[] {
  const sum = (formula: string, name: string, value: number, inputs: Sum['inputs']): Sum => ({ formula, result: { name, value }, inputs, sources: rulesSources })
  return [
    ...runs.flatMap(({ lowMm, highMm, from, to }, k) => {
      const of = windows.slice(from, to + 1)
      return [
        sum('run-low', `runs[${k}].lowMm`, lowMm, { lowMm, operation: from + of.findIndex((window) => window.lowMm === lowMm) + 1 }),
        sum('run-high', `runs[${k}].highMm`, highMm, { highMm, operation: from + of.findIndex((window) => window.highMm === highMm) + 1 }),
      ]
    }),
    sum('run-changes', 'changes', changes, { runs: runs.length }),
  ]
}
