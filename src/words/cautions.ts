import type { Units } from '#model/shop-record.ts'
import { type Situation, situations } from '#model/situation.ts'
import { termsFor } from '#words/terms.ts'

/** The usual caution for each situation, in the order in which the work goes, and last whom to follow instead of us. */
export function cautionsFor(given: ReadonlySet<Situation>, units: Units): readonly string[] {
  const { vise } = termsFor(units.words)
  const words: { readonly [situation in Situation]: string } = {
    'look first': 'Look the bars over before they carry anything: no burrs, no dings, wiped dry.',
    'seating': `Brush the chips out of the ${vise}; air drives them under the bars. Seat the part with a soft hammer, never a hard one on hardened bars or jaws, and do not hit after full tightening.`,
    'stack': 'Two high: wipe all faces between, and see that nothing rocks before tightening.',
    'single bar': 'One bar in the middle: the part can tip over it. Hold the part level until the jaws have it, and try it by hand.',
    'round part': 'A round part is held along two lines: see that it cannot roll or lift before cutting.',
    'step jaw': 'On the step of the jaws there is nothing under the part: do not drill through, and keep the cutter off the step.',
    'rod': 'A rod presses along one line: keep it level at half the grip, and try by hand whether the part can be tipped.',
    'straps': 'Every strap level, above a bar, its bolt nearer to the part than to its heel. Set a stop that takes the turning of the drill; straps alone do not.',
    'magnetic chuck': 'Only iron and steel stick to a magnetic chuck, and thin or small work little: block it in on all sides and try by hand before the table moves. Thin work is pulled flat and springs back when it is let go.',
    'thin grip': 'Little is inside the jaws: light cuts, and try by hand whether the part can be lifted or tipped.',
    'loose bar': 'A bar that can be pushed by hand walks into the cutter: hold it with a spring, or take it out before starting the spindle.',
    'handle off the vise': `Take the handle off the ${vise} before starting the spindle.`,
    'milling over bars': 'A cutter that meets a hardened bar throws carbide: look along the bars at the full depth of the cut before starting. Wear eye protection.',
    'drilling through': 'Breaking through is when a drill grabs: ease the feed. No gloves or long sleeves near the spindle.',
    'drill bar': 'The drill will cut into the drill bar: use only a soft bar kept for it, and look it over for burrs afterwards.',
  }
  return [
    ...situations.filter((situation) => given.has(situation)).map((situation) => words[situation]),
    'The instructions of the machine and its supplier, local rules and trained practice go before this list.',
  ]
}
