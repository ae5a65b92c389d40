import { keyWord } from '#words/key-words.ts'
import type { Say } from '#words/wording.ts'

/** What strips that pull out may mean, what may be behind it, how to tell, and what to do. Facts: those of the answer of `paper`. */
export const paperWords: { readonly [code: string]: Say } = {
  'seated': (facts, w) => `Down, as far as this paper can tell: a gap of up to ${w.length(facts.unseenUpToMm)} is not seen.`,
  'look-at-bars': () => 'All strips are held and the top is out all the same: look at the bars, the bed and the underside of the part.',
  'corner': (facts, w) => `One corner is loose, by ${w.length(facts.gapAtLeastMm)} at least. Look for a chip, a burr or a low place at ${places(facts, w)}.`,
  'moving-side-up': (facts, w) => `The side at the ${w.movingJaw} is up${howMuch(facts.wedgeAcrossAtLeastMm, facts, w)}.`,
  'fixed-side-up': (facts, w) => `The side at the fixed jaw is up${howMuch(facts.wedgeAcrossAtLeastMm, facts, w)}.`,
  'end-up': (facts, w) => `One end is up${howMuch(facts.wedgeAlongAtLeastMm, facts, w)}: it was not tapped down, or is canted in the jaws. Slacken, tap it down, tighten again.`,
  'twisted': (facts, w) => `Loose across a diagonal: part or bars are twisted, or there is dirt at ${places(facts, w)}.`,
  'one-corner': (facts, w) => `The part hangs in the jaws on one corner, or lies on dirt there: ${places(facts, w)}. Slacken, wipe, tap down, tighten again.`,
  'hung-up': () => 'The part hangs between the jaws and never reached the bars. Slacken, tap it down, tighten again.',

  'jaw-lift': (_facts, w) => `The ${w.movingJaw} lifts the part as it closes.`,
  'high-bar-fixed-side': () => 'The bar at the fixed jaw is higher, or lies on a chip.',
  'high-bar-moving-side': (_facts, w) => `The bar at the ${w.movingJaw} is higher, or lies on a chip.`,
  'side-not-square': () => 'The side at the fixed jaw is not square to the underside.',
  'fixed-jaw-leans': () => 'The fixed jaw leans.',

  'slacken-to-snug': () => 'Slacken to snug: it goes down.',
  'exchange-bars': () => 'Exchange the bars: it goes with the bar.',
  'turn-part': () => 'Turn the part round: it goes with the part.',
  'stays-throughout': () => 'It stays, whatever is exchanged or turned.',

  'mend-jaw-lift': () => 'Tap the part down at snug, then tighten no more than the cut asks for, and do not hit it after that.',
  'mend-high-bar-fixed-side': () => mendBars,
  'mend-high-bar-moving-side': () => mendBars,
  'mend-side-not-square': () => 'Put a side to the fixed jaw that is square to the underside, or square this one first.',
  'mend-fixed-jaw-leans': () => 'Indicate the fixed jaw; clean behind its plate and look for burrs before anything is shimmed or ground.',
}

const mendBars = 'Wipe both bars and the bed and feel for burrs; if it stays, check the pair at the plate.'

type Facts = Parameters<Say>[0]
type Wording = Parameters<Say>[1]

const howMuch = (wedge: Facts[string] | undefined, facts: Facts, w: Wording): string =>
  ` by ${w.length(facts.gapAtLeastMm)} at least between the strips${typeof wedge === 'number' ? `, ${w.length(wedge)} over the part` : ''}`

/** Corners by their names, most likely first. */
function places(facts: Facts, w: Wording): string {
  const corners = Array.isArray(facts.lookAt) ? facts.lookAt : []
  return corners.map((corner) => (typeof corner === 'string' ? (keyWord(corner, w) ?? corner) : '?')).join(', then ')
}
