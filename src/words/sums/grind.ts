import type { SumWords } from '#words/say-sum.ts'

/** The sums of grinding. */
export const grindSums: { readonly [formula: string]: SumWords } = {
  'grind-needed': { title: 'To come off each side', says: '{bowUm} + {cleanUpUm} + {skinUm} + {shrinkUm}' },
  'grind-spare': { title: 'To spare on each side', says: '{allowanceUm} − {neededUm}' },
  'grind-stage-passes': { title: 'Passes of a stage, each side', says: '{stageTakesUm} / {infeedUm}, up to the next whole pass' },
  'grind-sweeps': { title: 'Passes on each side', says: '{cutting} + {sparkOut}' },
  'grind-minutes': { title: 'Minutes of the machine', says: '2 × {sweeps} × ({acrossMm} + {wheelMm}) / {crossfeedMm} × ({lengthMm} + 2 × {overrunMm}) / (1000 × {tableMPerMin})' },
}
