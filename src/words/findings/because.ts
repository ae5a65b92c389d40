import type { Trust, Whereabouts } from '#model/bar.ts'
import type { Facts } from '#model/refusal.ts'
import type { PlaceStatus } from '#model/setup.ts'
import type { Way } from '#model/wishes.ts'
import { statusWords, trustWords, wayWords, whereWords } from '#words/say-place.ts'
import { counted, type Say, type Wording } from '#words/wording.ts'

/** Why a choice stands before the next one, and what forced its bars off their places. */
export const becauseWords: { readonly [code: string]: Say } = {
  'nothing-else-serves': () => 'Nothing else in the rack serves.',
  'last-that-serves': () => 'The last that serves.',
  'next-as-good': (facts, w) => `As good: ${next(facts, w)}. Take either.`,
  'next-above-advised': (facts, w) => `${before(facts, w)}: that seat, ${w.length(facts.nextMm)}, is above the highest advised, ${w.length(facts.advisedHighMm)}.`,
  'next-less-trusted': (facts, w) => `${before(facts, w)}: this is ${trustWords[facts.trust as Trust]}, that is ${trustWords[facts.nextTrust as Trust]}.`,
  'next-stands-otherwise': (facts, w) => `${before(facts, w)}: ${wayWords[facts.ownStand as Way]} goes first.`,
  'next-placed-worse': (facts, w) => `${before(facts, w)}: this stands ${statusWords[facts.status as PlaceStatus]}, that one would be ${statusWords[facts.nextStatus as PlaceStatus]}.`,
  'next-more-sunk': (facts, w) => `${before(facts, w)}: that would put the part ${w.length(facts.nextMm)} below the jaw tops.`,
  'next-less-grip': (facts, w) => `${before(facts, w)}: more grip, ${w.length(facts.gripMm)} against ${w.length(facts.nextMm)}.`,
  'next-further-away': (facts, w) => `${before(facts, w)}: this is ${whereWords(facts.where as Whereabouts, w)}, that is ${whereWords(facts.nextWhere as Whereabouts, w)}.`,
  'next-not-measured': (facts, w) => `${before(facts, w)}: this is measured, that is only marked.`,
  'next-matched-worse': (facts, w) => `${before(facts, w)}: matched to ${w.micrometres(facts.matchUm)}, that to ${w.micrometres(facts.nextUm)}.`,
  'next-wider': (facts, w) => `${before(facts, w)}: thinner, ${w.length(facts.acrossMm)} against ${w.length(facts.nextMm)}.`,
  'next-narrower': (facts, w) => `${before(facts, w)}: a single bar carries better when it is thicker, ${w.length(facts.acrossMm)} against ${w.length(facts.nextMm)}.`,
  'moved-inboard': (facts, w) =>
    `The bar toward the ${setFrom(facts, w)} stands ${w.length(facts.spacerMm)} off it: ${inTheWay(facts, w)} would meet it where it belongs. Put ${w.length(facts.spacerMm)} between jaw and bar.`,
  'moved-along': (facts, w) => `${w.bars(facts.bar)} is moved along, clear of ${counted('cut', 'cuts', facts.holes)}: set it ${w.length(facts.spacerMm)} from the ${setFrom(facts, w)}.`,
}

const before = (facts: Facts, w: Wording): string => `Before ${next(facts, w)}`

/** The other choice: its bars and how they stand. */
function next(facts: Facts, w: Wording): string {
  if (!Array.isArray(facts.bars) || facts.bars.length === 0) return 'the bare bed'
  return facts.stand === 'single' ? `${w.bars(facts.bars)} alone` : `${w.bars(facts.bars)} ${wayWords[facts.stand as Way] ?? '?'}`
}

/** `two 8.5 holes, 6 from the jaw,`; cuts of other kinds or sizes by their numbers. */
function inTheWay(facts: Facts, w: Wording): string {
  const count = Array.isArray(facts.holes) ? facts.holes.length : 1
  const cuts = typeof facts.diameterMm === 'number'
    ? `${count === 1 ? 'a' : smallNumbers[count] ?? String(count)} ${w.length(facts.diameterMm)} ${count === 1 ? 'hole' : 'holes'}`
    : counted('cut', 'cuts', facts.holes)
  return typeof facts.acrossMm === 'number' ? `${cuts}, ${w.length(facts.acrossMm)} from the jaw,` : cuts
}

const smallNumbers: readonly string[] = ['no', 'one', 'two', 'three', 'four', 'five', 'six']

/** What a spacer or a distance is set from. */
export function setFrom(facts: Facts, w: Wording): string {
  return facts.from === 'moving jaw' ? w.movingJaw : facts.from === 'left end' || facts.from === 'right end' ? `part's ${facts.from}` : 'fixed jaw'
}
