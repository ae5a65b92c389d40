import type { Fact } from '#model/refusal.ts'
import { setFrom } from '#words/findings/because.ts'
import type { Say, Wording } from '#words/wording.ts'

/** What else would do when no pair serves as it is. */
export const otherWayWords: { readonly [code: string]: Say } = {
  'adjustable-parallels': (facts, w) => `Adjustable parallels, both set by micrometer to ${heights(facts.lowMm, facts.highMm, 'one height between', w)}.`,
  'pair-on-strips': (facts, w) =>
    `The next lower pair, ${w.bars(facts.bars)}, on two strips ${heights(facts.fromMm, facts.toMm, 'of one thickness between', w)}${w.length(facts.fromMm) === w.length(facts.toMm) ? ' thick' : ''}, as long as the bars: for drilling or milling only.`,
  'at-jaw-instead': (facts, w) => `At the ${setFrom(facts, w)} would stand: ${[
    ...(facts.thickestMm === null ? [] : [`bars up to ${w.length(facts.thickestMm)} thick`]),
    ...(facts.longestMm === null ? [] : [`bars ${w.length(facts.acrossMm)} thick, up to ${w.length(facts.longestMm)} long`]),
  ].join('; ')}.`,
  'drill-bar-instead': (facts, w) => `Drill bars, which may be cut into, where ${w.bars(facts.bars)} would stand.`,
  'step-jaws': (facts, w) => `The step of the jaws '${w.text(facts.jaws)}', ${w.length(facts.stepMm)} above the bed: no bars, and nothing drilled through over it.`,
}

/** `one height between 33 and 35`, or the one height there is. */
function heights(lowMm: Fact | undefined, highMm: Fact | undefined, between: string, w: Wording): string {
  const low = w.length(lowMm), high = w.length(highMm)
  return low === high ? low : `${between} ${low} and ${high}`
}
