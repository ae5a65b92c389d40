import type { Sum } from '#model/sum.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { longestUm } from '#engine/inspect/reading-limits.ts'
import { commonGuardFactor, decisionRules, type VerdictAnswer, verdictOf, type VerdictQuestion } from '#engine/inspect/verdict.ts'

/** The calculation `verdict`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `verdictOf` */
export function answerVerdict(raw: unknown): VerdictAnswer & Ignored & { readonly sum: readonly Sum[] } {
  const { value: question, ignored } = readCase(raw, (object): VerdictQuestion => ({
    valueUm: object.number('valueUm', longestUm), uUm: object.number('uUm', longestUm),
    lowerUm: object.numberOr('lowerUm', null, longestUm), upperUm: object.numberOr('upperUm', null, longestUm),
    rule: object.wordOr('rule', decisionRules, 'guard-band'), guardFactor: object.numberOr('guardFactor', commonGuardFactor),
    cannotBeNegative: object.yesNoOr('cannotBeNegative', false),
  }))
  const answer = verdictOf(question)
  return { ...answer, ignored, sum: sumOf(question, answer) }
}

function sumOf({ valueUm, uUm, lowerUm, upperUm, rule, guardFactor }: VerdictQuestion, { guardUm, acceptFromUm, acceptToUm, pConform, provedToUm }: VerdictAnswer): readonly Sum[] {
  const sources = ['ISO-14253-1']
  return [
    { formula: 'guard', result: { name: 'guardUm', value: guardUm }, inputs: { guardFactor: rule === 'simple' ? 0 : guardFactor, uUm }, sources },
    ...(lowerUm === null ? [] : [{ formula: 'accept-from', result: { name: 'acceptFromUm', value: acceptFromUm }, inputs: { lowerUm, guardUm }, sources }]),
    ...(upperUm === null ? [] : [{ formula: 'accept-to', result: { name: 'acceptToUm', value: acceptToUm }, inputs: { upperUm, guardUm }, sources }]),
    { formula: 'chance-to-conform', result: { name: 'pConform', value: pConform }, inputs: { valueUm, uUm, lowerUm, upperUm }, sources: ['JCGM-106'] },
    { formula: 'proved-to', result: { name: 'provedToUm', value: provedToUm }, inputs: { valueUm, guardFactor: commonGuardFactor, uUm }, sources },
  ]
}
