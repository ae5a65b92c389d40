import { type Say, type Wording } from '#words/wording.ts'
import type { Facts } from '#model/refusal.ts'

/** How a part comes to lie, what it will tilt, and what the clamp is worth. */
export const seatWords: { readonly [code: string]: Say } = {
  'seat-collinear': () => 'All places that carry are in one line: nothing holds the part across it. Put a second bar under, or let the jaw hold it.',
  'seat-tips': (facts, w) => `The part tips: it is pressed ${w.length(facts.xMm)} along and ${w.length(facts.yMm)} across, outside what carries it.`,
  'on-edge': () => 'The part is pressed straight over the edge of what carries it: a hair further out and it tips.',
  'seat-rocks': (facts, w) => `The part rocks: by ${w.micrometres(facts.alongUm)} along and ${w.micrometres(facts.acrossUm)} across, as it is pressed. Turn or exchange the bars, or take a pair that matches better.`,
  'rocks-elsewhere': () => 'Pressed in another place it would lie another way: tap it down where it will be cut.',
  'bar-loose': (facts, w) => `${barText(facts.bar, w)} does not carry: ${w.micrometres(facts.gapUm)} is left over it at least. It pulls out and can walk into the cutter: hold it with a spring or take it out.`,
  'one-often-loose': () => 'Why one: the fixed jaw squares the part, the higher bar carries it, and nothing brings it down on the lower one. It does not tip for that; the bar is only not held.',
  'corner-loose': (facts, w) => `Loose ${cornerText(facts.corner, w)}: ${w.micrometres(facts.gapUm)}.`,
  'tilt-within-tolerance': (facts, w) => `From corner to corner the part lies ${w.micrometres(facts.overallUm)} out of level, within the ${w.micrometres(facts.toleranceUm)} asked for, if the heights are right.`,
  'tilt-beyond-tolerance': (facts, w) => `From corner to corner the part lies ${w.micrometres(facts.overallUm)} out of level; ${w.micrometres(facts.toleranceUm)} was asked for.`,
  'cannot-tell-which-bar': (facts, w) => `Nobody can tell which bar will be loose: the bars differ by ${w.micrometres(facts.differenceUm)}, and what the jaws do comes to ${w.micrometres(facts.jawsUm)}. The side of the ${w.movingJaw} is the usual one; try with paper.`,
  'part-will-tilt': (facts, w) => `What is cut will come out ${w.micrometres(facts.medianUm)} out of parallel from corner to corner as likely as not, and in 95 of 100 cases at most ${w.micrometres(facts.q95Um)}.`,
  'tolerance-missed': (facts, w) => `${w.micrometres(facts.toleranceUm)} is kept in about ${percent(facts.chance)} of 100 cases, fewer than 95.`,
  'load-over-line': () => 'The part is pressed straight over a line between two places that carry: it rocks there, and both ways of lying are counted alike.',
  'measure-first': (facts, w) => `What pays most to measure better: ${contributorText(facts, w)}. It would take ${w.micrometres(facts.gainUm)} off.`,
  'rocks-under-force': (facts, w) => `Even under this force the part rocks: by ${w.micrometres(facts.alongUm)} along and ${w.micrometres(facts.acrossUm)} across.`,
  'gap-closed-by-force': (facts, w) => `At most ${whole(facts.forceN)} N down would close ${w.micrometres(facts.gapUm)}. A gap closed by force opens when the jaw does, and the wedge is then in the work: clean, stone, exchange; do not hit harder.`,
  'no-force-closes': (facts, w) => `No force closes ${w.micrometres(facts.gapUm)} here: pressing in this place lifts the other side. Clean, stone, exchange; do not hit harder.`,
  'line-contact': () => 'The part touches along a line (a rod, a round part, a shallow step): how it holds is not computed.',
  'hold-least': (facts, w) => `The nearest limit is ${limitText(facts.limit)}: there is ${ratioText(facts.ratio, w)} times what was asked for, the shop's factor included.`,
  'hold-short': (facts, w) => `Short of what was asked for: ${limitText(facts.limit)}, only ${ratioText(facts.ratio, w)} times. Take less off at a time, more grip, more torque, or a stop.`,
  'clamp-estimated': (facts, w) => `The force of the ${w.vise} is a guess from the torque: with plain or rolling bearings it may be ${whole(facts.leastN)} to ${whole(facts.mostN)} N. Measure it, or take the maker's chart.`,
  'bows-by': (facts, w) => `Gripped below its middle, the part may bow up by ${w.micrometres(facts.um)} in the middle. Cut level it springs back hollow by that: more grip, less torque, light finishing cuts after slackening to snug.`,
  'bends-by': (facts, w) => `The drill bends the part down by ${w.micrometres(facts.um)} between the bars: set something between them, or feed lighter.`,
  'hold-not-computed': (facts, w) => `Not computed: ${w.text(Array.isArray(facts.what) ? facts.what.map((what) => limitText(what)) : [])}.`,
  'jaw-slope': () => 'The slope of the fixed jaw and the part\'s squareness.',
  'pull-up': () => 'The cutter pulling the part up.',
  'drill-torque': () => 'The torque of the drill.',
  'drill-thrust': () => 'The thrust of the drill, with nothing under it.',
  'part-buckles': () => 'The part giving way between the jaws.',
  'part-bows': () => 'The bow of the part under the jaws, against the tolerance.',
  'part-bends': () => 'The part bending between the bars under the drill.',
  'jaw-pressure': () => 'The pressure of the jaws on the grip.',
  'breaking-through': () => 'What a drill does when it breaks through.',
  'thin-walls': () => 'Thin walls.',
}

const plainTerms: { readonly [term: string]: string } = {
  'jaw-lift': 'how far closing lifts the part', slip: 'slipping along the jaws', tipping: 'tipping across the jaws', overhang: 'overhang past the bars', chatter: 'chatter', castings: 'castings', milling: 'milling', drilling: 'drilling', yielding: 'whether the part yields',
}

/** A limit, or what was not computed, inside a sentence. */
export function limitText(term: unknown): string {
  if (typeof term !== 'string') return '?'
  if (Object.hasOwn(plainTerms, term)) return plainTerms[term]!
  const said = term === 'line-contact' || !Object.hasOwn(seatWords, term) ? term.replace('-', ' ') : seatWords[term]!({}, {} as Wording).replace(/\.$/, '')
  return said.charAt(0).toLowerCase() + said.slice(1)
}

/** Whose uncertainty it is, inside a sentence. */
export function contributorText(facts: Facts, w: Wording): string {
  if (facts.of === 'bar') return typeof facts.bar === 'string' ? w.bars(facts.bar) : `bar ${order(facts.bar)}`
  return facts.of === 'bed' ? 'the bed' : facts.of === 'shop' ? 'the shop\'s own scatter' : limitText(facts.of)
}

/** A bar by its name, or by its place in the list where it has none. */
const barText = (bar: Facts[string] | undefined, w: Wording): string => (typeof bar === 'string' ? w.bars(bar) : `Bar ${order(bar)}`)

function cornerText(corner: unknown, w: Wording): string {
  const [jaw, end] = String(corner).split('-')
  return `at the ${jaw === 'fixed' ? 'fixed jaw' : w.movingJaw}, ${end === 'left' ? 'left' : 'right'} end`
}

const order = (index: unknown): string => (typeof index === 'number' ? String(index + 1) : '?')
const whole = (value: unknown): string => (typeof value === 'number' ? String(Math.round(value)) : '?')
const percent = (share: unknown): string => (typeof share === 'number' ? String(Math.floor(100 * share)) : '?')
const ratioText = (ratio: unknown, w: Wording): string => (typeof ratio === 'number' ? w.number(Math.floor(ratio * 100) / 100) : '?')
