import type { Cited } from '#model/cited.ts'
import type { CitedBand, HeatTable, Tempered } from '#model/heat-table.ts'

type Standing = Cited['standing']

const by = (source: string, standing: Standing = 'published'): Cited => ({ source, standing })
const band = (from: number, to: number, source: string, standing: Standing = 'published'): CitedBand => ({ from, to, ...by(source, standing) })
const tempered = (source: string, rows: readonly (readonly [atC: number, toHrc: number, fromHrc?: number])[]): readonly Tempered[] =>
  rows.map(([atC, toHrc, fromHrc = toHrc]) => ({ atC, fromHrc, toHrc, ...by(source) }))

/** An hour an inch is published; two hours in all is common practice. */
const twoHours = (source: string) => ({ minPer25Mm: 60, leastMin: 120, times: 1, ...by(source) })
const growthInOil = { from: 0.09, to: 0.22, usual: 0.15 }
const practice = 'SHOP-PRACTICE'

/**
 * Hardening and tempering of the steels that bars are made of, as data sheets state it.
 *
 * Of 42CrMo4 hardnesses are printed whose temperatures were cut off: it has no rows, and is refused where a hardness is asked for.
 *
 * @source STEEL-12842 STEEL-12510-A STEEL-12510-B STEEL-12510-C STEEL-12510-D STEEL-12379-A STEEL-12379-C STEEL-12379-D STEEL-12312-A STEEL-42CRMO4-A STEEL-42CRMO4-B STEEL-C45U DISTORTION-HANDBOOK SHOP-PRACTICE
 */
export const heatTables: readonly HeatTable[] = [
  {
    steel: '1.2842',
    stressReliefC: band(600, 650, practice, 'common practice'), preheatC: band(300, 500, 'STEEL-12842'), austenitiseC: band(790, 820, 'STEEL-12842'),
    soakMin: { by: 'section', ...band(30, 30, 'STEEL-12842') }, quench: { medium: 'oil', ...by('STEEL-12842') }, quenchToC: null,
    // not printed: what is left at 100 °C is 64/63
    asQuenchedHrc: band(63, 65, 'STEEL-12842', 'computed'),
    tempering: tempered('STEEL-12842', [[100, 64, 63], [150, 63, 62], [200, 62, 61], [250, 60, 59], [300, 58, 57], [400, 51, 50]]),
    temperHold: twoHours('STEEL-12842'), growthPercent: { ...growthInOil, ...by('DISTORTION-HANDBOOK', 'memory') },
  },
  {
    steel: '1.2510',
    stressReliefC: band(650, 650, 'STEEL-12510-A'), preheatC: band(300, 500, 'STEEL-12510-A'), austenitiseC: band(780, 820, 'STEEL-12510-A'),
    soakMin: { by: 'section', ...band(30, 30, 'STEEL-12510-A') }, quench: { medium: 'oil', ...by('STEEL-12510-A') }, quenchToC: band(65, 93, 'STEEL-12510-D'),
    asQuenchedHrc: band(64, 65, 'STEEL-12510-D'),
    tempering: [...tempered('STEEL-12510-C', [[177, 62], [260, 57]]), ...tempered('STEEL-12510-D', [[371, 53]]), ...tempered('STEEL-12510-B', [[425, 50]])],
    // 0.0015 in for each inch is published, the rest of the band is from memory
    temperHold: twoHours('STEEL-12510-A'), growthPercent: { ...growthInOil, ...by('STEEL-12510-D') },
  },
  {
    steel: '1.2379',
    stressReliefC: band(650, 700, 'STEEL-12379-C'), preheatC: band(750, 780, 'STEEL-12379-C'), austenitiseC: band(1000, 1030, 'STEEL-12379-C'),
    soakMin: { by: 'time', ...band(20, 45, 'STEEL-12379-B') }, quench: { medium: 'air', ...by('STEEL-12379-D') }, quenchToC: band(51, 66, 'STEEL-12379-D'),
    asQuenchedHrc: band(63, 65, 'STEEL-12379-A'),
    tempering: tempered('STEEL-12379-C', [[150, 62, 61], [200, 61, 60], [250, 60, 59], [300, 57, 56], [350, 56, 55], [400, 56, 55]]),
    temperHold: { minPer25Mm: 60, leastMin: 120, times: 2, ...by('STEEL-12379-D') },
    // a data sheet says slight contraction without a figure, tables from memory growth of 0.03 to 0.06: both ends are kept
    growthPercent: { from: -0.05, to: 0.06, usual: 0.03, ...by('DISTORTION-HANDBOOK', 'memory') },
  },
  {
    steel: '1.2312',
    stressReliefC: null, preheatC: null, austenitiseC: band(860, 860, 'STEEL-12312-A'),
    soakMin: { by: 'section', ...band(30, 30, practice, 'common practice') }, quench: { medium: 'oil', ...by('STEEL-12312-A') }, quenchToC: null,
    asQuenchedHrc: band(54, 54, 'STEEL-12312-A'),
    tempering: tempered('STEEL-12312-A', [[50, 54], [100, 53], [150, 52.5], [200, 52], [250, 51], [300, 50], [350, 49], [400, 47.5], [450, 46], [500, 43], [550, 40], [600, 36], [700, 30]]),
    temperHold: { ...twoHours(practice), standing: 'common practice' }, growthPercent: null,
  },
  {
    steel: '42CrMo4',
    stressReliefC: null, preheatC: null, austenitiseC: band(820, 860, 'STEEL-42CRMO4-B'),
    soakMin: { by: 'section', ...band(30, 30, practice, 'common practice') }, quench: { medium: 'oil', ...by('STEEL-42CRMO4-A') }, quenchToC: null,
    asQuenchedHrc: band(53, 61, 'STEEL-42CRMO4-B'), tempering: [],
    temperHold: { minPer25Mm: 60, leastMin: 60, times: 1, ...by(practice, 'common practice') }, growthPercent: null,
  },
  {
    steel: 'C45U',
    stressReliefC: null, preheatC: null, austenitiseC: band(810, 810, 'STEEL-C45U'),
    soakMin: { by: 'section', ...band(20, 30, practice, 'common practice') }, quench: { medium: 'water', ...by('STEEL-C45U') }, quenchToC: null,
    asQuenchedHrc: band(54, 54, 'STEEL-C45U'),
    tempering: tempered('STEEL-C45U', [[180, 54], [200, 54], [250, 52], [300, 48], [350, 45], [400, 42], [450, 39], [500, 35]]),
    temperHold: { minPer25Mm: 60, leastMin: 60, times: 1, ...by(practice, 'common practice') }, growthPercent: null,
  },
]
