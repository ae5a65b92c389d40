import type { SumWords } from '#words/say-sum.ts'

/** The sums of seat, prediction and clamp. */
export const seatSums: { readonly [formula: string]: SumWords } = {
  'height-under-load': { title: 'Height of the underside where it is pressed', says: '{aUm} + {bUmPerMm} × {xMm} + {cUmPerMm} × {yMm}' },
  'tilt-along': { title: 'Out of level along', says: '{bUmPerMm} × {partLengthMm}' },
  'tilt-across': { title: 'Out of level across', says: '{cUmPerMm} × {partWidthMm}' },
  'tilt-across-by-jaw': { title: 'Out of level across, as the fixed jaw holds it', says: '{cUmPerMm} × {partWidthMm}' },
  'rock-along': { title: 'Rocks along', says: 'from the least to the largest tilt, ways to lie: {ways}' },
  'tilt-drawn-along': { title: 'Mean tilt along', says: 'mean of the trials: {trials}, from seed {seed}' },
  'tilt-drawn-across': { title: 'Mean tilt across', says: 'mean of the trials: {trials}, from seed {seed}' },
  'tilt-overall': { title: 'Out of parallel from corner to corner, in 95 of 100 cases', says: 'along and across together, in 95 of 100 of the trials: {trials}, from seed {seed}' },
  'tilt-chance': { title: 'Chance to keep the tolerance', says: 'the share within {toleranceUm} of the trials: {trials}, from seed {seed}' },
  'sinks-under-force': { title: 'Height of the underside where it is pressed', says: 'where the springs balance {forceN}, pressed at {xMm} and {yMm}' },
  'closing-force': { title: 'Force that would close the gap, at most', says: 'least force under which every place carries, to close {gapUm}' },
  'hold-slip': { title: 'Slipping along the jaws', says: '{has} / {needed}' },
  'hold-pull-up': { title: 'The cutter pulling the part up', says: '{has} / {needed}' },
  'hold-tipping': { title: 'Tipping across the jaws', says: '{has} / {needed}' },
  'hold-drill-torque': { title: 'The torque of the drill', says: '{has} / {needed}' },
  'hold-drill-thrust': { title: 'The thrust of the drill', says: '{has} / {needed}' },
  'hold-part-buckles': { title: 'The part giving way between the jaws', says: '{has} / {needed}' },
  'hold-part-bows': { title: 'The part bowing up under the jaws, against the tolerance', says: '{has} / {needed}' },
  'hold-part-bends': { title: 'The part bending between the bars', says: '{has} / {needed}' },
  'hold-jaw-pressure': { title: 'The pressure of the jaws on the grip', says: '{has} / {needed}' },
}
