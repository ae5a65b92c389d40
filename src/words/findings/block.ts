import type { Say } from '#words/wording.ts'

/** The six-side block: what speaks for an order of faces, and what to mind at a step. */
export const blockWords: { readonly [code: string]: Say } = {
  'both-sides-from-one-face': () => 'Both sides are cut with the first face at the fixed jaw, so both are square to that one face.',
  'each-face-from-the-last': () => 'A quarter turn each time, the face just cut to the fixed jaw: quick and hard to get wrong, but what is out of square adds up from face to face.',
  'no-pair-serves': (facts, w) => (typeof facts.lowMm === 'number' && typeof facts.highMm === 'number' && facts.lowMm <= facts.highMm
    ? `No pair given does for this face: heights from ${w.length(facts.lowMm)} to ${w.length(facts.highMm)} would.` : 'No height does for this face: less has to come off, or the grip has to be less.'),
  'rod-at-moving-jaw': (facts, w) => `A rod (${w.length(facts.rodMm)} across) goes between the ${w.movingJaw} and the raw side, level at half the grip, so that the cut face beds at the fixed jaw.`,
  'rod-does-not-go-in': (facts, w) => `With the rod ${w.length(facts.neededMm)} is needed between the jaws and the ${w.vise} opens ${w.length(facts.openingMm)}: take a thinner rod.`,
  'raw-side-down': () => 'A raw side lies on the bars and may rock: see that it beds, and take only what cleans up.',
  'set-upright-by-square': () => 'The lower end is raw: set the block upright by a square on a cut side before tightening.',
  'end-past-the-jaw': (facts, w) => `The end stands out past the jaws by more than ${w.length(facts.clearMm)}, and every bar ends inside the new face.`,
}
