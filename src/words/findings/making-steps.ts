import type { Facts } from '#model/refusal.ts'
import type { Say } from '#words/wording.ts'

const quenches: { readonly [quench: string]: string } = { air: 'in still air or between plates', oil: 'in oil', water: 'in water' }

/** What to do at each step of making. */
export const makingStepWords: { readonly [code: string]: Say } = {
  'order-heights': (facts, w) => `Order ${w.number(facts.each)} of each of ${w.number(Array.isArray(facts.heightsMm) ? facts.heightsMm.length : null)} heights, mates from one grind.`,
  'record-as-found': () => 'Check on receipt and write down what was found, with the certificate if there is one.',
  'measure-ends-and-middle': () => 'Measure width and thickness at both ends and in the middle, and the bow, before anything is cut.',
  'saw-mates-side-by-side': (facts, w) => `Saw mates next to each other out of one piece and mark the same end of both; a cut takes ${w.length(facts.kerfMm)}.`,
  'square-ends': (facts, w) => `Square both ends to ${w.length(facts.lengthMm)}; the length of mates need not be equal.`,
  'mill-faces-evenly': (facts, w) => `Mill ${w.length(facts.eachMm)} off each face, both faces the same, so that no skin pulls.`,
  'rough-in-pairs': (facts, w) => `Both mates side by side in one grip, the same end to the stop; mill both edges, leave ${w.length(facts.leaveMm)} on each.`,
  'mill-before-hardening': () => 'Both mates side by side in one grip, the same end to the stop; mill both edges to the size for hardening, no sharp inside corners, no deep marks.',
  'let-lie-and-look': (facts, w) => `Let go, let them lie, look for bow. More than ${w.length(facts.bowMm)}: relieve at 550 to 650 °C and straighten, or leave more. Then clamp only lightly, so that the bar lies without strain.`,
  'finish-conventional': (facts, w) => `Finish both edges in one setup, ${w.length(facts.leaveMm)} each, conventional, both mates in the same pass.`,
  'spring-climb': () => 'Spring pass in climb at the same setting, nothing fed. With play in the table only with its locks snug.',
  'mark-on-ends': () => 'Break all edges, mark pair and end on the end faces, never on a face that is ground.',
  'rub-and-turn': (facts, w) => `240 grit on a ground plate, figures of eight, the same count for both mates, turned end for end between; ${w.length(facts.takesMm)} at most. For milling ridges, not for size.`,
  'wrap-against-skin': () => 'Degrease; foil, pack or inert gas against scale and lost carbon, or grind it off later.',
  'harden-together': (facts) => `Mates heated and quenched together${quench(facts) === null ? '' : `, ${quench(facts)}`}, hung or stood on edge. Follow the schedule of the steel's own sheet.`,
  'temper-at-once': (facts, w) => `Temper at once${typeof facts.hrc === 'number' ? `, to ${w.number(facts.hrc)} HRC` : ''}, before they are cold.`,
  'read-what-hardening-did': () => 'Three hardness readings on an end, bow of edges and faces, height at both ends and the middle. Growth is not counted on.',
  'press-to-bow': (facts, w) => `Press until the bow is at most ${w.length(facts.bowMm)}: warm from the temper, in small steps, reading after each; look for cracks.`,
  'temper-below-last': () => 'Temper again 20 °C below the last temper, to take the stress of the press out before the last passes.',
  'hard-mill-light': (_facts, w) => `Look for scale and soft skin first. Small side cuts of ${w.length(0.02)} to ${w.length(0.05)}, dry with air, both mates in the same pass, a new tool for the last one.`,
  'hollow-side-down': () => 'Hollow side down, shims under the hollow so that the magnet does not pull the bow out; light passes until clean, turn, both mates to one thickness.',
  'edges-as-pack': (_facts, w) => `Clean and check the chuck. Both mates as a pack against an angle, hollow edge down, shims under it; first edge of both in the same passes. The last ${w.length(0.02)} with a fresh fine dress, then spark-out.`,
  'sit-down-before-second': () => 'Before the second edge loosen the pack, so that each bar sits down on the chuck by itself; block both in, then grind both in the same passes.',
  'wipe-and-demagnetise': () => 'Wipe oil and chips off and demagnetise: what clings to a face is ground into it.',
  'stone-what-stands-up': () => 'Flat stone over faces and edges until nothing stands up any more. It takes burrs, not height.',
  'profile-known': (facts, w) => `${w.bars(facts.bar)}: ${w.length(facts.lowestMm)} to ${w.length(facts.highestMm)} at ${w.number(facts.places)} places, read on ${w.text(facts.day)}.`,
  'read-anew-if-stoned': () => 'Read them anew at the plate if they were stoned or knocked since; the last check before grinding counts.',
  'read-the-bow': () => 'Read the bow of each bar, face down on the plate: shims and clean-up follow from it.',
  'off-in-all': (facts, w) => `${w.bars(facts.bar)}: ${w.micrometres(facts.highestUm)} off its highest place in all, ${w.micrometres(facts.lowestUm)} off its lowest, to ${w.length(facts.toMm)}.`,
  'passes-in-stages': (facts, w) => `${stagesOf(facts, w)}, then ${w.number(facts.sparkOut)} without infeed. The wheel starts at the highest place of all.`,
  'other-face-taken-as-true': (facts) => `The face on the chuck${typeof facts.face === 'string' ? `, ${facts.face},` : ''} is taken as true: what it is out of flat comes out in the bar.`,
  'ground-on-alone': (facts, w) => `${w.bars(facts.bar)} is ground on alone by ${w.micrometres(facts.lowUm)} once the others are clean.`,
  'second-face-from-read': (facts, w) => `Worked out from what was read after the first face: to ${w.length(facts.newHeightMm)}.`,
  'mark-new-height': () => 'Cross out the old height and mark the new one, as read, on the end faces, never on a face that is ground. Mates keep their marks and their marked ends.',
  'read-one-at-plate': (facts, w) => `To the plate: two rows of five stations. For ${w.text(facts.use)} ${w.micrometres(facts.limitUm)} are asked.`,
  'taken-as-straight': () => 'No bow was read yet: the bars are taken as straight.',
  'bow-comes-off': (facts, w) => `A bow of ${w.micrometres(facts.bowUm)} comes off with the clean-up: at least ${w.micrometres(facts.eachUm)} off each face.`,
  'bow-stays-in': (facts, w) => `A bow of ${w.micrometres(facts.bowUm)} stays in the bars: with one face ground the other is taken as true. Grind both faces, or straighten first.`,
  'wipe-then-cool': () => 'Demagnetise, wipe, let them come to the temperature of the room, and only then read.',
  'stone-edges': (_facts, w) => `Break the edges by ${w.length(0.2)} to ${w.length(0.3)} with a stone, wipe, light oil.`,
  'read-at-plate': (facts, w) => `To the plate: two rows of five stations on each bar, mates at the same stations. ${w.text(facts.use)} asks for ${w.micrometres(facts.limitUm)}.`.replace(/\. ([a-z])/, (_all, first: string) => `. ${first.toUpperCase()}`),
}

/** `3 passes of 10 µm, 2 of 2 µm` */
function stagesOf({ passes, infeedsUm }: Facts, w: Parameters<Say>[1]): string {
  const infeeds = Array.isArray(infeedsUm) ? infeedsUm : [], counts = Array.isArray(passes) ? passes : []
  const said = counts.flatMap((count, k) => (count === 0 ? [] : [`${w.number(count)} of ${w.micrometres(infeeds[k] ?? null)}`]))
  return said.length === 0 ? 'Nothing to take' : `Passes: ${said.join(', ')}`
}

const quench = ({ quench: how }: Facts): string | null => (typeof how === 'string' && Object.hasOwn(quenches, how) ? quenches[how]! : null)
