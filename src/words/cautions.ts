import type { Units } from '#model/shop-record.ts'
import { type Situation, situations } from '#model/situation.ts'
import { termsFor } from '#words/terms.ts'
import { capital } from '#words/wording.ts'

/** The usual caution for each situation, in the order in which the work goes, and last whom to follow instead of us. */
export function cautionsFor(given: ReadonlySet<Situation>, units: Units): readonly string[] {
  const { vise, gauge } = termsFor(units.words)
  const words: { readonly [situation in Situation]: string } = {
    'sawing': 'Saw: clamp the piece so that the cut opens, let the offcut fall away from the blade, keep hands out of its line. With an angle grinder: the right disc with its guard on, not past its date, both hands, eyes and ears covered. No gloves near a blade that runs.',
    'milling bars': 'Two bars in one grip: see that both are held, try each by hand, long chips away with a hook, never by hand. No gloves or long sleeves near the spindle. Wear eye protection.',
    'rubbing': 'Cloth and steel dust: fingers off the edges of the bar, wipe, do not blow.',
    'sharp edges': 'Fresh edges cut like knives: break them before the bars are handed on. Leather gloves for carrying, none near a spindle.',
    'furnace': 'Furnace: face shield, dry heat-proof gloves, tongs. Below about 500 °C hot steel has no colour that warns. Only a furnace rated for the heat, nothing that burns around it.',
    'quench': 'Quench oil: a metal tank with a lid, far below its flash point, never a drop of water in it: it foams and boils over. Dry bars and tongs, right under in one movement; a bar half in sets the oil on fire. The right extinguisher at hand, no water.',
    'untempered': 'A bar that is quenched and not tempered can crack by itself: temper at once, as soon as it can be held in the hand; do not drop it, do not hammer it.',
    'straightening': 'Hardened bars can break when they are straightened, or days after: temper first, a guard or wrapping around the bar, face shield, nobody in its line, no hammer. Look for cracks afterwards.',
    'hard milling': 'Chips of hardened steel glow and fly: closed in or behind a shield, eye and face protection, dry with air, short tool. Stop if the edge chips: carbide flies.',
    'grinding wheel': 'Wheel: look it over and ring-test it before mounting, never above its marked speed, flanges clean, guard on. Run it free for a minute, standing aside. Wear eye protection, extract dust and mist.',
    'grinding thin bars': 'Bars on edge on a magnetic chuck hold poorly: block them in on all sides, at least half as high as they are and lower than the work, and try by hand before the table moves.',
    'stoning': 'Stone and wipe: what is left on an edge ends in a hand or under a part.',
    'at the plate': `${capital(gauge)} blocks are never bars: they stay at the plate. Wipe plate, bars and blocks, and carry long bars with both hands: a dropped one hurts feet and plate.`,
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
