import type { Finding } from '#model/finding.ts'
import type { Units } from '#model/shop-record.ts'
import { becauseWords } from '#words/findings/because.ts'
import { blockWords } from '#words/findings/block.ts'
import { choiceWords } from '#words/findings/choice.ts'
import { cutListWords } from '#words/findings/cut-list.ts'
import { cuttingWords } from '#words/findings/cutting.ts'
import { grindWords } from '#words/findings/grind.ts'
import { guiltyWords } from '#words/findings/guilty.ts'
import { heatWords } from '#words/findings/heat.ts'
import { inspectWords } from '#words/findings/inspect.ts'
import { lifeWords } from '#words/findings/life.ts'
import { makingRouteWords } from '#words/findings/making-route.ts'
import { makingSizeWords } from '#words/findings/making-sizes.ts'
import { makingStepWords } from '#words/findings/making-steps.ts'
import { openWords } from '#words/findings/open.ts'
import { otherWayWords } from '#words/findings/other-ways.ts'
import { paperWords } from '#words/findings/paper.ts'
import { predictionWords } from '#words/findings/prediction.ts'
import { rackWords } from '#words/findings/rack.ts'
import { rackFileWords } from '#words/findings/rack-file.ts'
import { rejectionWords } from '#words/findings/rejection.ts'
import { seatWords } from '#words/findings/seat.ts'
import { straightenWords } from '#words/findings/straighten.ts'
import { tableWords } from '#words/findings/table.ts'
import { type NameOf, type Say, wordingFor } from '#words/wording.ts'

export const findingWords: { readonly [code: string]: Say } = {
  ...becauseWords, ...choiceWords, ...openWords, ...otherWayWords, ...rejectionWords, ...rackFileWords, ...inspectWords,
  ...paperWords, ...tableWords, ...guiltyWords, ...blockWords, ...rackWords, ...lifeWords, ...straightenWords, ...heatWords, ...cuttingWords, ...grindWords, ...seatWords,
  ...makingRouteWords, ...makingStepWords, ...makingSizeWords, ...cutListWords, ...predictionWords,
}

/** A finding, a *because*, another way or a reason why not, as a sentence. A code nobody has worded is named as it is. */
export function sayFinding(finding: Finding, units: Units, nameOf?: NameOf): string {
  const say = Object.hasOwn(findingWords, finding.code) ? findingWords[finding.code]! : undefined
  return say ? say(finding.facts, wordingFor(units, nameOf)) : `Note: ${finding.code}.`
}
