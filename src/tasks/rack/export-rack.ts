import { stringify } from 'csv-stringify/sync'
import { mmPerInch, wordNumber } from '#model/length.ts'
import { recordOf } from '#store/records.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { columnNames, sizeNames } from '#tasks/rack/csv-columns.ts'
import { csvStyle, guarded } from '#tasks/rack/csv-guard.ts'
import { listRack } from '#tasks/rack/list-rack.ts'

/**
 * The rack as CSV (docs/rack-csv.md), in the shop's unit; semicolons where its decimal mark is the comma.
 *
 * Bars that are gone or still being made are left out. Trust and measured heights do not travel: every bar goes out as
 * `look first` or `drill bar`, its height as a plain number.
 */
export async function exportRack(store: Store): Promise<string> {
  const { units, lines } = await atOneMoment(store, async (tx) => ({ units: (await recordOf(tx, 'shop', 'shop')).units, lines: await listRack(tx) }))
  const size = (mm: number) => wordNumber(units.length === 'in' ? mm / mmPerInch : mm, units.decimalMark, null, units.length === 'in' ? 8 : 6)
  const mates = textsOfMates(lines)
  const heads = columnNames.map((name) => ((sizeNames as readonly string[]).includes(name) ? `${name} ${units.length}` : name))
  const rows = lines.filter(({ trust }) => trust !== 'in work').map((line) => [
    line.code, guarded(line.name), size(line.heightMm), size(line.thicknessMm), size(line.lengthMm), guarded(mates.get(line.matesId) ?? ''),
    guarded(line.slot ?? ''), line.trust === 'drill bar' ? 'drill bar' : 'look first', guarded(line.note),
  ])
  return stringify([heads, ...rows], { ...csvStyle, delimiter: units.decimalMark === ',' ? ';' : ',' })
}

/** Each group of mates under a text of its own: its name, numbered where another group or nobody has that name. */
function textsOfMates(lines: readonly { readonly matesId: string | null; readonly mates: string | null }[]): ReadonlyMap<string | null, string> {
  const texts = new Map<string | null, string>()
  const taken = new Set<string>()
  for (const { matesId, mates } of lines) {
    if (matesId === null || texts.has(matesId)) continue
    const name = mates ?? ''
    let text = name
    for (let number = 1; text === '' || taken.has(text); number += 1) text = `${name.slice(0, 34)} ${number}`.trim()
    taken.add(text)
    texts.set(matesId, text)
  }
  return texts
}
