import type { Cited } from '#model/cited.ts'
import type { InstrumentIs } from '#model/instrument-record.ts'
import { dialIndicators } from '#reference/instruments/dial-indicators.ts'
import { instrumentDefaults } from '#reference/instruments/instrument-defaults.ts'
import { micrometers } from '#reference/instruments/micrometers.ts'

/** Figures of an instrument as a book has them, each with where it is from. What the book leaves open is not named. */
export type BookFigures = {
  readonly name: string
  readonly resolutionUm?: number
  readonly limitUm?: number
  readonly repeatabilityUm?: number
  readonly fromMm?: number
  readonly toMm?: number
  readonly cited: { readonly [figure in 'resolutionUm' | 'limitUm' | 'repeatabilityUm' | 'fromMm' | 'toMm']?: Cited }
}

const practice: Cited = { source: 'SHOP-PRACTICE', standing: 'common practice' }

/** An instrument by its kind, until its certificate is known. Of all but dials the repeatability is common practice. */
const usual = (kinds: readonly string[]): readonly BookFigures[] => instrumentDefaults.filter(({ kind }) => kinds.includes(kind)).map((row) => {
  const from: Cited = { source: row.source, standing: row.standing }
  // The limit of a micrometer is by its range.
  const limitUm = row.kind === 'micrometer' ? null : row.limitUm
  return {
    name: `${row.kind}, ${row.resolutionUm} µm`, resolutionUm: row.resolutionUm,
    ...(limitUm === null ? {} : { limitUm }), ...(row.repeatabilityUm === null ? {} : { repeatabilityUm: row.repeatabilityUm }),
    cited: { limitUm: from, repeatabilityUm: row.kind === 'indicator' ? from : practice },
  }
})

/** Dials by bezel, graduation and range; in comparing, only a tenth of a turn is used. */
const dials: readonly BookFigures[] = dialIndicators.map(({ bezel, graduationMm, toMm, tenthTurnUm, repeatabilityUm, source, standing }) => ({
  name: `dial, ${bezel} bezel, ${graduationMm * 1000} µm, range ${toMm} mm`, resolutionUm: graduationMm * 1000, limitUm: tenthTurnUm, repeatabilityUm,
  cited: { limitUm: { source, standing }, repeatabilityUm: { source, standing } },
}))

const ranges: readonly BookFigures[] = micrometers.map(({ fromMm, toMm, limitUm, source, standing }) => {
  const from: Cited = { source, standing }
  return { name: `${fromMm} to ${toMm} mm`, fromMm, toMm, limitUm, cited: { fromMm: from, toMm: from, limitUm: from } }
})

/** What can be taken over at one touch: by what it is, and of a micrometer by its range. */
export const bookFigures: { readonly [is in InstrumentIs['is']]: readonly { readonly label: string; readonly rows: readonly BookFigures[] }[] } = {
  'indicator': [{ label: 'figures by the book', rows: [...usual(['indicator', 'lever indicator', 'probe']), ...dials] }],
  'micrometer': [{ label: 'range by the book', rows: ranges }, { label: 'what it is, by the book', rows: usual(['micrometer', 'bench micrometer']) }],
  'gauge blocks': [],
  'plate': [],
}

type Figures = { readonly [figure in 'resolutionUm' | 'limitUm' | 'repeatabilityUm' | 'fromMm' | 'toMm']?: number | null }

/**
 * Where a figure is from: the book that has it with the resolution or range it stands beside; null: the shop's own.
 * A micrometer's permissible error is by range, all else by resolution.
 */
export function sourceOf(is: InstrumentIs['is'], figure: 'limitUm' | 'repeatabilityUm', figures: Figures): Cited | null {
  const beside = is === 'micrometer' && figure === 'limitUm' ? ['fromMm', 'toMm'] as const : ['resolutionUm'] as const
  const found = bookFigures[is].flatMap(({ rows }) => rows)
    .find((row) => row[figure] !== undefined && row[figure] === figures[figure] && beside.every((key) => row[key] === figures[key]))
  return found?.cited[figure] ?? null
}
