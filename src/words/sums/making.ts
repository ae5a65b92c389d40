import type { Sum } from '#model/sum.ts'
import type { SumWords } from '#words/say-sum.ts'

/** The sums of orders, routes, blanks and plans. */
export const makingSums: { readonly [formula: string]: SumWords } = {
  'ladder-top': { title: 'Highest', says: '{jawHeightMm} − {belowMm}' },
  'ladder-rungs': { title: 'How many heights', says: '({ladderTopMm} − {ladderLowMm}) / {stepMm} + 1' },
  'bars-each': { title: 'Bars of each height', says: '2 × {pairs} × {vises}' },
  'bars-in-all': { title: 'Bars in all', says: '{each} × {rungs}' },
  'length-under-jaw': { title: 'Length', says: '{jawWidthMm} − {underMm}' },
  'blank-height': { title: 'Height of the blank', says: added },
  'blank-thickness': { title: 'Thickness of the blank', says: added },
  'blank-length': { title: 'Length of the blank', says: added },
  'route-hours': { title: 'Hours of the route', says: '{route}: the hours of {steps} steps' },
  'route-cost': { title: 'Cost of the route', says: '{route}: {stockCost} + {workCost} + {outsideCost} + {toolsCost}' },
  'needed-per-side': { title: 'Needed on each side', says: '{bar}: {bowMm} + {cleanUpMm} + {skinMm}' },
  'needed-per-side-planned': { title: 'Needed on each side, as planned', says: '{bar}: {bowMm} + {cleanUpMm} + {skinMm}' },
  'downfeed-per-side': { title: 'Comes off each side, from the highest place', says: '{mates}: ({highestMm} − {finishedMm} + {bowMm}) / 2' },
  'passes-per-side': { title: 'Passes on each side', says: '{cutting} for {downfeedMm} + {sparkOut}' },
}

function added(inputs: Sum['inputs']): string {
  return Object.keys(inputs).map((name) => `{${name}}`).join(' + ')
}
