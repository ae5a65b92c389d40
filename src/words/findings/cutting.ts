import type { Facts } from '#model/refusal.ts'
import type { Say, Wording } from '#words/wording.ts'

const rounded = (value: Facts[string] | undefined): string => (typeof value === 'number' ? String(Math.round(value)) : '?')
const times = (value: Facts[string] | undefined, w: Wording): string => (typeof value === 'number' ? w.number(Math.round(value * 100) / 100) : '?')
const pass = (facts: Facts): string => (facts.kind === 'rough' ? 'In roughing' : 'In finishing')
const usual = (facts: Facts, w: Wording): string => `usual are ${w.number(facts.fromMPerMin)} to ${w.number(facts.toMPerMin)}`

/** What to know of a cut along an edge. */
export const cuttingWords: { readonly [code: string]: Say } = {
  'speed-slow': (facts, w) => `${times(facts.mPerMin, w)} m/min is slow (${usual(facts, w)}): legal, the edge lasts, it only takes longer. Keep the feed per tooth; slower feed makes it rub.`,
  'speed-fast': (facts, w) => `${times(facts.mPerMin, w)} m/min is fast (${usual(facts, w)}): the edge burns off. Take a slower speed.`,
  'speed-limited': (facts) => `The machine runs at ${rounded(facts.rpm)} 1/min where ${rounded(facts.wantedRpm)} were wanted.`,
  'speed-too-fast': (facts) => `The slowest speed of the machine is ${rounded(facts.rpm)} 1/min; wanted were ${rounded(facts.wantedRpm)}. Take a smaller cutter or another machine.`,
  'feed-limited': (facts, w) => `The table feeds at most ${rounded(facts.mostMmPerMin)} mm/min: ${w.length(facts.feedPerToothMm)} a tooth instead of ${w.length(facts.wantedMm)}. Run slower rather than rub.`,
  'power-limited': (facts, w) => `The motor has ${w.number(facts.mostKw)} kW: ${w.length(facts.feedPerToothMm)} a tooth instead of ${w.length(facts.wantedMm)}. Take narrower passes rather than rub.`,
  'feed-small': (facts, w) => `${w.length(facts.feedPerToothMm)} a tooth is below the ${w.length(facts.fromMm)} that are usual for the cutter: it may rub instead of cutting.`,
  'feed-large': (facts, w) => `${w.length(facts.feedPerToothMm)} a tooth is above the ${w.length(facts.toMm)} that are usual for the cutter: it may break.`,
  'chip-thin': (facts, w) => `${pass(facts)} the chip is ${w.micrometres(1000 * Number(facts.chipMm))} thick at the most. Below ${w.micrometres(1000 * Number(facts.leastMm))} the edge rubs; force and power are reckoned as if it were that thick.`,
  'feed-may-rise': (facts, w) => `${pass(facts)} ${times(100 * Number(facts.share), w)} % of the cutter is in: the chip is ${times(facts.perFeed, w)} of the feed. The feed may rise ${times(facts.feedFactor, w)} times, to ${w.length(facts.feedPerToothMm)} a tooth; the finish gets coarser.`,
  'cut-deep': (facts, w) => `${w.length(facts.depthMm)} along a cutter of ${w.length(facts.diameterMm)} is more than ${w.number(facts.most)} diameters: it chatters. Take it in two depths, or a thicker cutter.`,
  'hss-too-soft': () => 'High-speed steel does not mill hardened steel: take carbide made for it.',
  'exponent-assumed': (facts, w) => `No exponent is printed for hardened steel; ${w.number(facts.mc)} of its neighbours was taken, so force and power are rough.`,
  'cutter-bends': (facts, w) => `The cutter bends away: at most ${w.micrometres(facts.finishUm)} are left after finishing, ${w.micrometres(facts.leftUm)} in the end, and the wall leans by ${w.micrometres(facts.taperUm)}. Holder, collet and spindle give too and are not in it: read the edge for square, not only for height.`,
  'spring-pass-climb': (facts, w) => `The spring pass climbs at the same setting and takes about ${w.micrometres(facts.widthUm)}: table locks snug, as a table with play is pulled along.`,
  'cutter-sheet-first': () => "Speeds and feeds are to start from; the cutter's own sheet goes before them.",
}
