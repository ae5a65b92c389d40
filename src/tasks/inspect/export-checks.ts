import { stringify } from 'csv-stringify/sync'
import type { Check } from '#model/check.ts'
import type { ChecksFile } from '#model/checks-file.ts'
import { checksOf } from '#store/checks.ts'
import { recordsOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { cellsFrom, checkHeads, checkPart, lookPart, readingPart } from '#tasks/inspect/check-columns.ts'
import { csvStyle, guarded } from '#tasks/rack/csv-guard.ts'

/** Every check of the shop as it is kept, in the order of time, with the labels of the bars they are of; or one check alone. */
export function exportChecks(store: Store, id?: string): Promise<ChecksFile> {
  return atOneMoment(store, async (tx) => {
    const checks = (await checksOf(tx)).filter((check) => id === undefined || check.id === id), named = new Set(checks.flatMap(barsIn))
    return { bars: (await recordsOf(tx, 'bar')).flatMap((bar) => (named.has(bar.id) ? [{ id: bar.id, code: bar.code, name: bar.name }] : [])), checks }
  })
}

/** The same as CSV (docs/checks-csv.md): numbers with a point and in full, whatever the shop's decimal mark, so that nothing is lost. */
export async function exportChecksCsv(store: Store, id?: string): Promise<string> {
  const { bars, checks } = await exportChecks(store, id), barAt = new Map(bars.map((bar) => [bar.id, bar]))
  const row = (what: string, check: string, bar: string | null, cells: ReadonlyMap<string, string>): string[] => {
    const own = new Map([...cells, ['what', what], ['id', check]]), label = bar === null ? undefined : barAt.get(bar)
    if (bar !== null) own.set('bar', bar).set('code', label?.code ?? '').set('name', guarded(label?.name ?? ''))
    return checkHeads.map((head) => own.get(head) ?? '')
  }
  const rows = checks.flatMap((check) => [
    row('check', check.id, null, cellsFrom(checkPart, check)),
    ...check.looks.map((look) => row('look', check.id, look.bar, cellsFrom(lookPart, look, 'look.'))),
    ...check.readings.map((reading) => row('reading', check.id, reading.bar, cellsFrom(readingPart, reading, 'reading.'))),
  ])
  return stringify([[...checkHeads], ...rows], csvStyle)
}

/** Every bar that a check names. */
export const barsIn = ({ readings, looks, zero }: Check): readonly string[] => [...new Set([...readings.map(({ bar }) => bar), ...looks.map(({ bar }) => bar), ...(zero?.on === 'bar' ? [zero.bar] : [])])]
