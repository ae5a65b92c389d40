import type { SumWords } from '#words/say-sum.ts'

/** The sums of the setup, in the order of a setup. */
export const setupSums: { readonly [formula: string]: SumWords } = {
  'low-cutter-over-jaw': { title: 'Lowest seat, for the cutter', says: '{jawHeightMm} + {depthMm} + {airMm} − {heightMm}' },
  'low-drill-tip': { title: 'Lowest seat, for the tip of the drill', says: '{tipMm} + {runThroughMm} + {bedAirMm}' },
  'low-through-cut': { title: 'Lowest seat, for the cut that comes out below', says: '{runThroughMm} + {bedAirMm}' },
  'low-bed': { title: 'Lowest seat', says: '{bedMm}' },
  'high-grip': { title: 'Highest seat, for the grip', says: '{jawHeightMm} − {gripMm}' },
  'high-contact-line': { title: 'Highest seat, for the line of contact', says: '{jawHeightMm} − {gripLineMm} − {diameterMm} / 2' },
}
