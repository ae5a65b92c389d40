import type { SumWords } from '#words/say-sum.ts'

/** The sums of what stands beside the setup: row, paper, table, chuck, fillers, one pair for many, who is guilty. */
export const seatingSums: { readonly [formula: string]: SumWords } = {
  'row-top': { title: 'Top of the pair', says: '{meanMm} + {bedUm}' },
  'row-offset': { title: 'Z offset from the first', says: '{topMm} − {firstTopMm}' },
  'row-spread': { title: 'Highest less lowest top', says: '{highestTopMm} − {lowestTopMm}' },
  'row-worst-match': { title: 'Worst match of the pairs used', says: '{worstMatchUm}' },
  'row-long-bar': { title: 'How much a long bar rises from end to end', says: '({toBedUm} − {fromBedUm}) / {apartMm} × {longMm}' },
  'paper-gap': { title: 'Gap at a loose strip, at least', says: '{stripMm}' },
  'paper-wedge-across': { title: 'Wedge across the part, at least', says: '{stripMm} × {betweenJawsMm} / {stripsAcrossMm}' },
  'paper-wedge-along': { title: 'Wedge along the part, at least', says: '{stripMm} × {alongJawsMm} / {stripsAlongMm}' },
  'paper-unseen': { title: 'Gap that is not seen, at most', says: '{stripMm}' },
  'low-table': { title: 'Lowest seat: the table', says: '{tableMm}' },
  'chuck-low': { title: 'Lowest bar to block in with', says: '{heightMm} / 2' },
  'chuck-high': { title: 'Highest bar to block in with', says: '{heightMm} − {belowTopMm}' },
  'fill-total': { title: 'What the fillers add to', says: (inputs) => ['firstMm', 'secondMm', 'thirdMm'].filter((name) => typeof inputs[name] === 'number').map((name) => `{${name}}`).join(' + ') },
  'fill-error': { title: 'Fillers less the gap', says: '{totalMm} − {targetMm}' },
  'run-low': { title: 'Lowest height for this run', says: '{lowMm}, of operation {operation}' },
  'run-high': { title: 'Highest height for this run', says: '{highMm}, of operation {operation}' },
  'run-changes': { title: 'Changes of pairs', says: '{runs} − 1' },
  'guilty-bars': { title: 'Share of the bars', says: '({y1Um} − {y2Um}) / 2' },
  'guilty-block': { title: 'Share of the block', says: '({y1Um} − {y3Um}) / 2' },
  'guilty-bed': { title: 'Share of the bed', says: '({y2Um} + {y3Um}) / 2' },
  'guilty-closing': { title: 'What tightening adds', says: '{y4Um} − {y1Um}' },
  'uncertainty-of-half': { title: 'Standard uncertainty of half a sum or difference', says: '{uUm} / √2' },
  'uncertainty-of-difference': { title: 'Standard uncertainty of a difference', says: '{uUm} × √2' },
}
