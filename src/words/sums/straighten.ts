import type { SumWords } from '#words/say-sum.ts'

/** The sums of pressing a bar straight. */
export const straightenSums: { readonly [formula: string]: SumWords } = {
  'bending-first-load': { title: 'Force at which the skin first yields, in N', says: '2 × {yieldMPa} × {pressedWidthMm} × {pressedDepthMm}² / (3 × {spanMm})' },
  'bending-first-depth': { title: 'Depth at which the skin first yields', says: '{yieldMPa} × {spanMm}² / (6 × {eMPa} × {pressedDepthMm})' },
  'bending-load': { title: 'Force as a multiple of that', says: 'where (5 − (3 + p) × √(3 − 2 p)) / p² − p is {wantedSetUm} / {deltaYUm}' },
  'bending-hinge-load': { title: 'Force as a multiple of that, at the hinge', says: 'the most there is: {wantedSetUm} is more than 13 / 18 of {deltaYUm}' },
  'press-force': { title: 'Force of the press, in N', says: '{p} × {pyN}' },
  'springback': { title: 'Springs back', says: '{p} × {deltaYUm}' },
  'press-depth': { title: 'Depth to press to', says: '{wantedSetUm} + {springbackUm}' },
}
