import type { Sum } from '#model/sum.ts'
import type { SumWords } from '#words/say-sum.ts'

/** The sums of the rack: heights to own, share served, regrinding. */
export const rackSums: { readonly [formula: string]: SumWords } = {
  'heights-single': { title: 'Fewest heights, one for each window', says: 'for {windows} windows the highest step of {step} in the one that ends first, again and again' },
  'heights-different': { title: 'Fewest heights, two different ones on each other allowed', says: stacked },
  'heights-same': { title: 'Fewest heights, any two on each other allowed', says: stacked },
  'share-served': { title: 'Share of the setups that is served', says: '{served} / {setups}' },
  'share-with-next': { title: 'Setups served with the next heights', says: '{served} + {gained}' },
  'regrind-height': { title: 'New height', says: '{lowestMm} − {faces} × {cleanUpUm}' },
  'regrind-height-step': { title: 'New height', says: '{lowestMm} − {faces} × {cleanUpUm}, down to a multiple of {stepUm}' },
  'regrind-total': { title: 'Comes off the highest place', says: '{highestMm} − {newHeightMm}' },
  'regrind-passes': { title: 'Passes', says: '{cutting} + {faces} × {sparkOut}' },
}

function stacked(inputs: Sum['inputs']): string {
  return inputs.bound === null ? 'some of {windows} windows cannot be served' : 'for {windows} windows; fewer than {bound} cannot do'
}
