import type { Say } from '#words/wording.ts'

/** What else would do when no pair serves as it is. */
export const otherWayWords: { readonly [code: string]: Say } = {
  'adjustable-parallels': (facts, w) => `Adjustable parallels, both set to one height between ${w.length(facts.lowMm)} and ${w.length(facts.highMm)} with a micrometer.`,
  'pair-on-strips': (facts, w) =>
    `The next lower pair, ${w.bars(facts.bars)}, on two strips of one thickness between ${w.length(facts.fromMm)} and ${w.length(facts.toMm)}, as long as the bars: for drilling or milling only.`,
  'step-jaws': (facts, w) => `The step of the jaws '${w.text(facts.jaws)}', ${w.length(facts.stepMm)} above the bed: no bars, and nothing drilled through over it.`,
}
