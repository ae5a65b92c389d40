import type { Cited } from '#model/cited.ts'

/** What an instrument is taken to be until its certificate is entered. A null is asked for: nothing sensible is known. */
export type InstrumentDefault = Cited & {
  readonly kind: 'indicator' | 'lever indicator' | 'probe' | 'micrometer' | 'bench micrometer' | 'caliper'
  /** The smallest step that is read. */
  readonly resolutionUm: number
  /** Permissible error ±, over the short travel used in comparing; of a micrometer by its range. */
  readonly limitUm: number | null
  /** Standard deviation of repeats. */
  readonly repeatabilityUm: number | null
}

type Row = readonly [kind: InstrumentDefault['kind'], resolutionUm: number, limitUm: number | null, repeatabilityUm: number | null, source: string, standing: InstrumentDefault['standing']]

const rows: readonly Row[] = [
  // Dials: limit over a tenth of a turn and limit of repeatability, which is more than a standard deviation.
  ['indicator', 1, 2, 0.5, 'JIS-B-7503', 'published'], ['indicator', 10, 5, 3, 'JIS-B-7503', 'published'],
  ['lever indicator', 2, 4, 1, 'SHOP-PRACTICE', 'common practice'], ['lever indicator', 10, 10, 3, 'DIN-2270', 'memory'],
  ['probe', 0.1, null, 0.1, 'SHOP-PRACTICE', 'common practice'], ['probe', 1, null, 0.5, 'SHOP-PRACTICE', 'common practice'],
  ['micrometer', 1, 4, 1, 'DIN-863', 'published'], ['micrometer', 10, 4, 2, 'DIN-863', 'published'],
  // Finer than any row of the table of limits: its certificate counts.
  ['bench micrometer', 0.1, null, 0.2, 'SHOP-PRACTICE', 'common practice'], ['bench micrometer', 1, null, 0.5, 'SHOP-PRACTICE', 'common practice'],
  ['caliper', 10, 20, 10, 'SHOP-PRACTICE', 'common practice'],
]

/** The limits are from the named source; the repeatability of all but the dials is common practice. @source JIS-B-7503 DIN-2270 DIN-863 SHOP-PRACTICE */
export const instrumentDefaults: readonly InstrumentDefault[] = rows
  .map(([kind, resolutionUm, limitUm, repeatabilityUm, source, standing]) => ({ kind, resolutionUm, limitUm, repeatabilityUm, source, standing }))
