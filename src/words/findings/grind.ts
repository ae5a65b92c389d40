import type { Say } from '#words/wording.ts'

/** What to do at the grinder, in order, and what to know before. */
export const grindWords: { readonly [code: string]: Say } = {
  'grind-clean-chuck': (_facts, w) => `Deburr and demagnetise the bars. Clean the chuck with a cloth, then the palm; see by the ${w.indicator} that its top is true.`,
  'grind-pack': (facts, w) => `Stand the ${w.number(facts.bars)} bars on edge side by side against the blocking angle, clamped together as a pack.`,
  'grind-shim-hollow': (facts, w) => `Hollow side down, with ${w.micrometres(facts.shimUm)} of shim under the middle, so that the magnet does not pull the bow flat: what is pulled flat springs back.`,
  'grind-block-in': (facts, w) => `Block the bars in on all sides: blocks at least ${w.length(facts.leastMm)} high and lower than ${w.length(facts.belowMm)}, across the poles. Try by hand that nothing moves.`,
  'grind-first-side': (facts, w) => `The first side of all bars in the same passes, ${w.number(facts.passes)} of them, light ones until it is clean.`,
  'grind-loosen-pack': () => 'Loosen the pack: each bar has to sit down on the chuck by itself, blocked in, before the second side. A bar that was held up in the pack comes out higher.',
  'grind-turn': (facts, w) => (facts.turns === 1 ? 'Wipe, turn all bars over.' : `Wipe, turn all bars over: ${w.number(facts.turns)} times in all, the last two to finish, as the bow lets go when the skin is off.`),
  'grind-second-side': (facts, w) => `The other side of all ${w.number(facts.bars)} bars together, in the same ${w.number(facts.passes)} passes: they come out alike.`,
  'grind-last-dress': (facts, w) => `For the last ${w.micrometres(facts.lastUm)} dress the wheel fresh and fine; coolant on.`,
  'grind-spark-out': (facts, w) => `Spark out: ${w.number(facts.sparkOut)} passes without infeed on each side.`,
  'grind-cool': () => 'Demagnetise, wipe, then let the bars come to the temperature of the room, and only then read them.',
  'grind-break-edges': () => 'Break the edges with a stone, 0.2 to 0.3 mm; mark the pair on the ends, never on a ground face.',
  'grind-allowance-enough': (facts, w) => `${w.micrometres(facts.neededUm)} have to come off each side; the ${w.micrometres(facts.allowanceUm)} that are there are enough, with ${w.micrometres(facts.byUm)} to spare.`,
  'grind-allowance-short': (facts, w) => `${w.micrometres(facts.neededUm)} have to come off each side and only ${w.micrometres(facts.allowanceUm)} are there, ${w.micrometres(facts.byUm)} short: straighten first, or make a lower bar of it.`,
  'growth-no-stock': (facts, w) => `The size has grown by about ${w.micrometres(facts.growthUm)}; that is not counted as stock.`,
  'infeed-large': (facts, w) => `An infeed of ${w.micrometres(facts.infeedUm)} is more than the ${w.micrometres(facts.mostUm)} that a stiff machine takes in ${facts.stage === 'rough' ? 'roughing' : 'finishing'}.`,
  'wheel-speed-unusual': (facts, w) => `The rim runs at ${w.number(Math.round(10 * Number(facts.mPerS)) / 10)} m/s; usual are ${w.number(facts.fromMPerS)} to ${w.number(facts.toMPerS)}. What is marked on the wheel goes before.`,
  'grinding-burns': () => 'Steel tempered cool burns and cracks easily: sharp wheel, small infeeds, coolant. Where a face turns blue, its hardness is not to be trusted.',
  'no-size-aimed-at': () => 'No size is aimed at: stop when all sides are clean, and call the bars what they then read.',
}
