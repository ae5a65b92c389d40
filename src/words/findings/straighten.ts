import type { Say } from '#words/wording.ts'

/** What to know before a bar is pressed straight. */
export const straightenWords: { readonly [code: string]: Say } = {
  'set-beyond-hinge': (facts, w) => `${w.micrometres(facts.wantedSetUm)} is more than the ${w.micrometres(facts.largestSetUm)} that can be reckoned with: past it the bar folds under the same force, and real steel hardens. Go in small steps and read after each.`,
  'span-short': (facts, w) => `A span of ${w.length(facts.spanMm)} on ${w.length(facts.depthMm)} of depth is short of ${w.number(facts.least)} to 1: the bar shears as well, and less stays than is told.`,
  'set-hangs-on-yield': (facts, w) => `With a yield stress ${w.number(facts.offPercent)} % higher or lower the same depth leaves ${w.micrometres(facts.lowUm)} or ${w.micrometres(facts.highUm)} where ${w.micrometres(facts.wantedSetUm)} is wanted: creep up to the depth, let go and read each time.`,
  'pressed-bar-may-break': () => 'A hardened bar can break in the press or days after: temper first, keep behind a guard with eyes covered, no hammer, look for cracks, and temper again before it is ground.',
}
