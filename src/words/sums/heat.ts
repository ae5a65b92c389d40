import type { SumWords } from '#words/say-sum.ts'

/** The sums of hardening and tempering. */
export const heatSums: { readonly [formula: string]: SumWords } = {
  'soak-by-section': { title: 'Minutes at heat', says: '{minPer25} × {sectionMm} / 25 mm, up to the next whole minute' },
  'temper-between': { title: 'Tempering temperature, in °C', says: 'where {hrc} lies between the rows at {lowC} and {highC}' },
  'temper-row': { title: 'Tempering temperature, in °C', says: 'the row nearest to {hrc}' },
  'temper-hold': { title: 'Minutes of each temper', says: '{minPer25} × {sectionMm} / 25 mm, at least {leastMin}' },
  'growth-of-size': { title: 'Growth in hardening', says: '{sizeMm} × {percent} / 100' },
  'hardness-converted': { title: 'Vickers hardness, converted', says: 'beside {hrc} in the table' },
}
