import type { Situation } from '#model/situation.ts'
import type { Sum } from '#model/sum.ts'
import { belowTopMm, chuckOf, travels, type Chuck, type ChuckQuestion } from '#engine/setup/chuck/chuck.ts'
import { readBar } from '#engine/setup/read-bar.ts'
import { readPart } from '#engine/setup/read-part.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { defaultWishes } from '#engine/setup/read-wishes.ts'
import { refuseImpossible } from '#engine/setup/refuse.ts'
import { rulesSources } from '#engine/setup/sum-sources.ts'

/** `situations`: which cautions belong beside the answer. */
export type ChuckAnswer = Chuck & Ignored & { readonly situations: readonly Situation[]; readonly sum: readonly Sum[] }

/** The calculation `chuck`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `refuseImpossible` */
export function answerChuck(raw: unknown): ChuckAnswer {
  const { value: question, ignored } = readCase(raw, (object): ChuckQuestion => ({
    part: object.object('part', readPart)!, bars: object.list('bars', readBar), travel: object.wordOr('travel', travels, 'along'),
  }))
  refuseImpossible({ part: question.part, cuts: [], wishes: defaultWishes, bars: question.bars })
  const chuck = chuckOf(question), { heightMm } = question.part
  return {
    ...chuck, situations: ['magnetic chuck'], ignored,
    sum: [sum('chuck-low', 'lowMm', chuck.lowMm, { heightMm }), sum('chuck-high', 'highMm', chuck.highMm, { heightMm, belowTopMm })],
  }
}

const sum = (formula: string, name: string, value: number, inputs: Sum['inputs']): Sum => ({ formula, result: { name, value }, inputs, sources: rulesSources })
