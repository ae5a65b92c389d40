import type { Finding } from '#model/finding.ts'
import type { Units } from '#model/shop-record.ts'
import { blockWords } from '#words/findings/block.ts'
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
import { paperWords } from '#words/findings/paper.ts'
import { rackWords } from '#words/findings/rack.ts'
import { rackFileWords } from '#words/findings/rack-file.ts'
import { straightenWords } from '#words/findings/straighten.ts'
import { tableWords } from '#words/findings/table.ts'
import { sayBy, setupFindingWords } from '#words/say-setup-finding.ts'
import type { NameOf, Say } from '#words/wording.ts'

export const findingWords: { readonly [code: string]: Say } = {
  ...setupFindingWords, ...rackFileWords, ...inspectWords, ...paperWords, ...tableWords, ...guiltyWords, ...blockWords, ...rackWords, ...lifeWords,
  ...straightenWords, ...heatWords, ...cuttingWords, ...grindWords, ...makingRouteWords, ...makingStepWords, ...makingSizeWords, ...cutListWords,
}

/** A finding of any kind, a *because*, another way or a reason why not, as a sentence. A code nobody has worded is named as it is. */
export function sayFinding(finding: Finding, units: Units, nameOf?: NameOf): string {
  return sayBy(findingWords, finding, units, nameOf)
}
