import type { Cited } from '#model/cited.ts'
import { type CitedBand, type HeatTable, quenchMedia } from '#model/heat-table.ts'
import { Refusal } from '#model/refusal.ts'
import type { HeatQuestion } from '#engine/make/heat/heat.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { refuseNotPositive } from '#engine/setup/seat/read-part.ts'

const mostC = 2000, mostHrc = 100, mostMin = 10_000, mostPercent = 100, mostRows = 1000

/** The shop's own rows. */
const own: Cited = { source: 'SHOP', standing: 'shop' }

export type HeatCase = Omit<HeatQuestion, 'hardness'>

/**
 * `steel` names a table of the books, `table` brings one of the shop: alone whole, beside `steel` for what it says.
 *
 * @param books  what `steel` may name
 */
export function readHeat(raw: RawObject, books: readonly HeatTable[]): HeatCase {
  const named = raw.has('steel') ? raw.word('steel', books.map(({ steel }) => steel)) : null, book = books.find(({ steel }) => steel === named) ?? null
  // a steel that is not known is complained about by itself, and nothing then asked of a table
  const stand = raw.has('steel') ? (book ?? books[0]!) : null
  const table = raw.has('table') || stand === null ? raw.object('table', (object) => readTable(object, stand)) : stand
  const hasMeasured = raw.has('measuredHrc')
  return {
    table: table!, thicknessMm: raw.number('thicknessMm'), heightMm: raw.numberOr('heightMm', null), lengthMm: raw.numberOr('lengthMm', null),
    hrc: hasMeasured ? raw.numberOr('hrc', null, mostHrc) : raw.number('hrc', mostHrc), measuredHrc: raw.numberOr('measuredHrc', null, mostHrc), stressRelief: raw.yesNoOr('stressRelief', false),
  }
}

function readTable(raw: RawObject, book: HeatTable | null): HeatTable {
  const bandOr = (key: string, other: CitedBand | null, most: number): CitedBand | null => { const band = raw.rowOr(key, [most, most], null); return band === null ? other : bandOf(band) }
  const per25 = raw.numberOr('soakMinPer25Mm', null, mostMin), soakMin = bandOr('soakMin', null, mostMin)
  const bandNeeded = (key: string, most: number): CitedBand => bandOf(raw.rowOr(key, [most, most], null) ?? raw.numbers(key, most))
  const growth = raw.rowOr('growthPercent', [mostPercent, mostPercent, mostPercent], null), hold = book?.temperHold ?? { minPer25Mm: 60, leastMin: 120, times: 1, source: 'SHOP-PRACTICE', standing: 'common practice' as const }
  const minPer25Mm = raw.numberOr('temperMinPer25Mm', null, mostMin), leastMin = raw.numberOr('temperLeastMin', null, mostMin), times = raw.countOr('tempers', null)
  return {
    steel: raw.has('name') ? raw.text('name') : (book?.steel ?? 'SHOP'),
    stressReliefC: bandOr('stressReliefC', book?.stressReliefC ?? null, mostC), preheatC: bandOr('preheatC', book?.preheatC ?? null, mostC),
    austenitiseC: book === null ? bandNeeded('austenitiseC', mostC) : bandOr('austenitiseC', book.austenitiseC, mostC)!,
    soakMin: per25 !== null ? { by: 'section', ...bandOf([per25, per25]) } : soakMin !== null ? { by: 'time', ...soakMin } : (book?.soakMin ?? { by: 'section', ...bandOf([raw.number('soakMinPer25Mm', mostMin)]) }),
    quench: raw.has('quench') || book === null ? { medium: raw.word('quench', quenchMedia)!, ...own } : book.quench,
    quenchToC: bandOr('quenchToC', book?.quenchToC ?? null, mostC), asQuenchedHrc: bandOr('asQuenchedHrc', book?.asQuenchedHrc ?? null, mostHrc),
    tempering: raw.has('tempering') || book === null ? raw.rows('tempering', [mostC, mostHrc, mostHrc], mostRows).map(([atC, a, b]) => ({ atC: atC!, fromHrc: Math.min(a!, b!), toHrc: Math.max(a!, b!), ...own })) : book.tempering,
    temperHold: minPer25Mm === null && leastMin === null && times === null ? hold : { minPer25Mm: minPer25Mm ?? hold.minPer25Mm, leastMin: leastMin ?? hold.leastMin, times: times ?? hold.times, ...own },
    growthPercent: growth === null ? (book?.growthPercent ?? null) : { from: Math.min(...growth), to: Math.max(...growth), usual: growth.toSorted((a, b) => a - b)[1]!, ...own },
  }
}

/** Either way round; one number is both ends. */
const bandOf = (ends: readonly number[]): CitedBand => ({ from: Math.min(...ends), to: Math.max(...ends), ...own })

/** @throws Refusal `size-not-positive`; `value-not-allowed` (tempers) */
export function refuseHeat({ table, thicknessMm, heightMm, lengthMm, measuredHrc }: HeatCase): void {
  for (const [field, given] of Object.entries({ thicknessMm, heightMm, lengthMm, measuredHrc })) if (given !== null) refuseNotPositive(given, field)
  const { austenitiseC, soakMin, temperHold } = table
  for (const [field, given] of Object.entries({ austenitiseC: austenitiseC.from, soakMin: soakMin.from, temperMinPer25Mm: temperHold.minPer25Mm, temperLeastMin: temperHold.leastMin })) refuseNotPositive(given, `table.${field}`)
  if (temperHold.times < 1 || temperHold.times > 3) throw new Refusal('value-not-allowed', { field: 'table.tempers', given: temperHold.times, needed: [1, 2, 3] })
}
