import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { type Hold, holdOf, type HoldQuestion, type Limit } from '#engine/setup/hold/hold.ts'
import { type ClampRange, holdQuestionFrom, readHold } from '#engine/setup/hold/read-hold.ts'

/** `clampN`, `friction` and the forces are what the limits were worked out from. */
export type HoldAnswer = Hold & Ignored & Pick<HoldQuestion, 'clampN' | 'friction' | 'milling' | 'drilling'> & { readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }

/** The calculation `hold`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `holdQuestionFrom` */
export function answerHold(raw: unknown): HoldAnswer {
  const { value, ignored } = readCase(raw, readHold), { question, range } = holdQuestionFrom(value), hold = holdOf(question)
  const { clampN, friction, milling, drilling } = question
  return { ...hold, clampN, friction, milling, drilling, findings: findingsOf(hold, range), ignored, sum: sumOf(question, hold) }
}

/** Nobody sees less than this on a part. Common practice, no source. */
const leastSeenUm = 1

function findingsOf({ least, limits, bowsUm, bendsUm, notComputed }: Hold, range: ClampRange | null): readonly Finding[] {
  return [
    ...(notComputed.includes('line-contact') ? [{ code: 'line-contact', facts: {} }] : []),
    ...(least === null ? [] : [{ code: 'hold-least', facts: { limit: least.limit, ratio: least.ratio } }]),
    ...limits.filter(({ ratio }) => ratio < 1).map(({ limit, ratio }) => ({ code: 'hold-short', facts: { limit, ratio } })),
    ...(bowsUm === null || bowsUm < leastSeenUm ? [] : [{ code: 'bows-by', facts: { um: bowsUm } }]),
    ...(bendsUm === null || bendsUm < leastSeenUm ? [] : [{ code: 'bends-by', facts: { um: bendsUm } }]),
    ...(range === null ? [] : [{ code: 'clamp-estimated', facts: { leastN: range.leastN, mostN: range.mostN } }]),
    { code: 'hold-not-computed', facts: { what: notComputed } },
  ]
}

const formulas: { readonly [limit in Limit['limit']]: string } = {
  'slip': 'hold-slip', 'pull-up': 'hold-pull-up', 'tipping': 'hold-tipping', 'drill-torque': 'hold-drill-torque', 'drill-thrust': 'hold-drill-thrust',
  'part-buckles': 'hold-part-buckles', 'part-bows': 'hold-part-bows', 'part-bends': 'hold-part-bends', 'jaw-pressure': 'hold-jaw-pressure',
}

function sumOf({ clampN, friction }: HoldQuestion, { limits }: Hold): readonly Sum[] {
  return limits.map(({ limit, needed, has, ratio }) => ({ formula: formulas[limit], result: { name: 'ratio', value: ratio }, inputs: { has, needed, clampN, friction }, sources: ['HOLD-RULES', 'STRENGTH'] }))
}
