import { betweenNumbers, capital, counted, type Say } from '#words/wording.ts'

/**
 * Why a candidate does not serve, short, to stand after its height: `40: grip 5, 5 under your wish`.
 *
 * Facts that may be given: `too-high` gripMm, underMm · `too-low` limit (what sets the low end), belowMm (cutter below the jaw tops), underMm (short of
 * the wished air), reachMm (below the part), intoBedMm · `too-thick` acrossMm, bars, betweenMm, leftMm (less than 0: they meet), gapMm · `fouled` and others `holes` (indexes) · `not-matched` matchUm, limitUm.
 */
export const rejectionWords: { readonly [code: string]: Say } = {
  'not-available': () => 'Being made, or gone from the rack.',
  'round-on-two-bars': () => 'A round part between the jaws does not rest on two bars: take one in the middle.',
  'not-matched': (facts, w) =>
    'matchUm' in facts ? `The two differ by ${w.micrometres(facts.matchUm)}, more than ${w.micrometres(facts.limitUm)} for this use.` : 'The two differ in height by more than this use allows.',
  'thickness-not-measured': () => 'Lying flat it stands on its thickness, which is only marked: measure it first, or use it for drilling.',
  'too-thick': tooThick,
  'too-low': (facts, w) => capital(`${tooLow(facts, w)}.`),
  'too-high': (facts, w) => (`gripMm` in facts ? `Grip ${w.length(facts.gripMm)}${betweenNumbers(w.units)}${w.length(facts.underMm)} under your wish.` : 'Too little grip.'),
  'bar-in-cut': () => 'It reaches into the end that is cut: take shorter bars.',
  'fouled': (facts) => `A hole or cut would meet a bar${facts.holes === undefined ? '' : ` (${counted('cut', 'cuts', facts.holes)})`}: no place is left for it.`,
  'off-balance': () => 'The bars stand too far to one side to carry the part.',
  'not-carried': () => 'A bar stands under a hollow and carries too little of the part.',
}

function tooLow(...[facts, w]: Parameters<Say>): string {
  if (typeof facts.belowMm === 'number') return `cutter ${w.length(facts.belowMm)} below the jaw tops`
  if (facts.limit === 'cutter-over-jaw' && Math.abs(Number(facts.airMm)) < levelMm) return `cutter level with the jaw tops, ${w.length(facts.underMm)} under your wish`
  if (facts.limit === 'cutter-over-jaw') return `cutter only ${w.length(facts.airMm)} clear of the jaws, ${w.length(facts.underMm)} under your wish`
  if (typeof facts.reachMm === 'number') return comesOutBelow(facts, w)
  if (facts.limit === 'drill-tip') return `the drill would come ${w.length(facts.underMm)} too near the bed`
  if (facts.limit === 'through-cut') return `the cut that comes out below would come ${w.length(facts.underMm)} too near the bed`
  return 'too low'
}

/** Less than this above the jaw tops is level with them, as it is said. */
const levelMm = 0.001

/** How far the tip or the cut reaches below the part, and what that means for the bed. */
function comesOutBelow(...[facts, w]: Parameters<Say>): string {
  const what = facts.limit === 'drill-tip' ? 'tip' : 'cut', short = `${w.length(facts.underMm)} short of the wished air`
  const intoBed = typeof facts.intoBedMm === 'number' ? `${w.length(facts.intoBedMm)} into the bed, ` : ''
  return `${what} ${w.length(facts.reachMm)} below the part, ${intoBed}${short}`
}

function tooThick(...[facts, w]: Parameters<Say>): string {
  if (typeof facts.leftMm !== 'number') return 'Too thick to go under the part.'
  if (facts.bars === 1) return `Too thick: ${w.length(facts.acrossMm)} does not go under ${w.length(facts.betweenMm)}.`
  if (facts.leftMm < 0) return `Too thick: two of ${w.length(facts.acrossMm)} meet under ${w.length(facts.betweenMm)}.`
  return `Too thick: two of ${w.length(facts.acrossMm)} leave ${w.length(facts.leftMm)} between them, under ${w.length(facts.gapMm)}.`
}
