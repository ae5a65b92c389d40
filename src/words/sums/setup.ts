import type { Sum } from '#model/sum.ts'
import type { SumWords } from '#words/say-sum.ts'

/** The sums of the setup, in the order of a setup. */
export const setupSums: { readonly [formula: string]: SumWords } = {
  'low-cutter-over-jaw': { title: 'Lowest seat, for the cutter over the jaws', says: '{jawHeightMm} + {depthMm} + {airMm} − {heightMm}' },
  'tip-drill': { title: 'Length of the drill\'s point', says: '{diameterMm} / 2 / tan({pointAngleDeg} / 2)' },
  'tip-tap': { title: 'Length of the tap\'s lead', says: '{leadThreads} × {pitchMm}' },
  'tip-ream': { title: 'Length of the tool\'s end', says: '{tipMm}' },
  'low-drill-tip': { title: 'Lowest seat, for the tip of the drill', says: '{tipMm} + {runThroughMm} + {bedAirMm}' },
  'low-through-cut': { title: 'Lowest seat, for the cut that comes out below', says: '{runThroughMm} + {bedAirMm}' },
  'low-bed': { title: 'Lowest seat: the bed', says: '{bedMm}' },
  'grip-auto': { title: 'Grip asked for', says: 'the lesser of 10 mm and 0.6 × ({heightMm} − {depthMm})' },
  'high-grip': { title: 'Highest seat, for the grip', says: '{jawHeightMm} − {gripWishMm}' },
  'high-contact-line': { title: 'Highest seat, for the line where the jaw touches', says: '{jawHeightMm} − {gripLineMm} − {diameterMm} / 2' },
  'width': { title: 'Width of the window', says: '{highMm} − {lowMm}' },
  'stick-out-by-grip': { title: 'Highest seat by stick-out for the grip', says: '{jawHeightMm} − {heightMm} / (1 + {stickOutPerGrip})' },
  'stick-out-by-thickness': { title: 'Highest seat by stick-out for the part\'s width', says: '{jawHeightMm} + {stickOutPerThickness} × {betweenJawsMm} − {heightMm}' },
  'advised-high': { title: 'Highest advised seat', says: (inputs) => `the least of ${given(inputs, ['highMm', 'maxSeatMmByGrip', 'maxSeatMmByThickness']).join(', ')}` },
  'give-up-grip': { title: 'Grip that would leave one height', says: '{jawHeightMm} − {lowMm}' },
  'give-up-air': { title: 'Air over the jaws that would leave one height', says: '{highMm} − ({jawHeightMm} + {depthMm} − {heightMm})' },
  'give-up-bed-air': { title: 'Air above the bed that would leave one height', says: '{highMm} − {reachBelowMm}' },
  'give-up-run-through': { title: 'Run-through that would leave one height', says: '{highMm} − {bedAirMm} − {tipMm}' },
  'seat-on-one': { title: 'Seat on one bar', says: '{firstMm}' },
  'seat-on-two': { title: 'Seat on two bars', says: '({firstMm} + {secondMm}) / 2' },
  'seat-on-stack': { title: 'Seat on two pairs', says: '({firstMm} + {secondMm}) / 2 + ({thirdMm} + {fourthMm}) / 2' },
  'match-of-two': { title: 'Match of the two', says: 'the difference of {firstMm} and {secondMm}' },
  'match-of-columns': {
    title: 'Match of the two columns',
    says: 'the lesser difference of {firstMm} + {thirdMm} and {secondMm} + {fourthMm}, or of {firstMm} + {fourthMm} and {secondMm} + {thirdMm}',
  },
  'bed-air-at-seat': { title: 'Above the bed', says: '{seatMm} − {reachBelowMm}' },
  'grip-at-seat': { title: 'Grip', says: 'the lesser of {jawHeightMm} − {seatMm} and {heightMm}' },
  'grip-round-at-seat': { title: 'Jaw above the line where it touches', says: 'the lesser of {jawHeightMm} − {seatMm} − {diameterMm} / 2 and {diameterMm} / 2' },
  'stick-out-at-seat': { title: 'Above the jaws', says: '{seatMm} + {heightMm} − {jawHeightMm}' },
  'air-at-seat': { title: 'Clear of the jaws', says: '{stickOutMm} − {depthMm}' },
  'stick-out-per-grip': { title: 'Above the jaws for each grip', says: (inputs) => ('aboveLowerJawMm' in inputs ? '{aboveLowerJawMm} / {gripMm}' : '{stickOutMm} / {gripMm}') },
  'needed-across': { title: 'Room the bars need', says: (inputs) => given(inputs, ['thicknessMm', 'secondThicknessMm', ...(typeof inputs.secondThicknessMm === 'number' ? ['gapMm'] : [])]).join(' + ') },
  'keep-out-hole': { title: 'A bar keeps from the middle of the hole', says: '{diameterMm} / 2 + {holeAirMm}' },
  'place-across': { title: 'Where the bar stands across', says: '{wantedYMm} + {movedMm}' },
  'place-along': { title: 'Where the bar stands along', says: '{wantedXMm} + {movedMm}' },
  'base-along': { title: 'What the bars carry, along', says: (inputs) => ('leastXMm' in inputs ? 'the larger of 0 and {leastXMm}' : 'the lesser of {mostXMm} and {alongJawsMm}') },
  'base-across': { title: 'What the bars carry, across', says: (inputs) => ('leastYMm' in inputs ? 'the larger of 0 and {leastYMm}' : 'the lesser of {mostYMm} and {betweenJawsMm}') },
}

/** The inputs of these names that have a value. */
function given(inputs: Sum['inputs'], names: readonly string[]): readonly string[] {
  return names.filter((name) => inputs[name] !== null && inputs[name] !== undefined).map((name) => `{${name}}`)
}
