import type { Finding } from '#model/finding.ts'
import type { Units } from '#model/shop-record.ts'
import { becauseWords } from '#words/findings/because.ts'
import { choiceWords } from '#words/findings/choice.ts'
import { openWords } from '#words/findings/open.ts'
import { otherWayWords } from '#words/findings/other-ways.ts'
import { predictionWords } from '#words/findings/prediction.ts'
import { rejectionWords } from '#words/findings/rejection.ts'
import { seatWords } from '#words/findings/seat.ts'
import { type NameOf, type Say, wordingFor } from '#words/wording.ts'

/** What the first screen can have to say: the words of checks, of making and of the rest are fetched by the screens that need them. */
export const setupFindingWords: { readonly [code: string]: Say } = {
  ...becauseWords, ...choiceWords, ...openWords, ...otherWayWords, ...predictionWords, ...rejectionWords, ...seatWords,
}

/** A finding, a *because*, another way or a reason why not of a setup, as a sentence. A code nobody has worded is named as it is. */
export function saySetupFinding(finding: Finding, units: Units, nameOf?: NameOf): string {
  return sayBy(setupFindingWords, finding, units, nameOf)
}

export function sayBy(words: { readonly [code: string]: Say }, { code, facts }: Finding, units: Units, nameOf?: NameOf): string {
  const say = Object.hasOwn(words, code) ? words[code]! : undefined
  return say ? say(facts, wordingFor(units, nameOf)) : `Note: ${code}.`
}
