import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { checkText } from '#cli/check-text.ts'
import { plainText } from '#cli/columns.ts'
import type { JsonOptions, UnitOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { readBytes } from '#cli/read-json.ts'
import { SaidRefusal } from '#cli/run-to-its-end.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { complained } from '#cli/complained.ts'
import { makerFor } from '#tasks/maker.ts'
import { barsNamedIn } from '#tasks/inspect/bars-named-in.ts'
import { readingsFromCsv } from '#tasks/inspect/readings-from-csv.ts'
import { recordCheck, type TypedReading } from '#tasks/inspect/record-check.ts'
import { sayFinding } from '#words/say-finding.ts'

export type RecordOptions = JsonOptions & UnitOptions & {
  readonly method: 'compare' | 'micrometer' | 'turn-over' | 'stated'
  readonly bar?: readonly string[]; readonly zero?: string; readonly zeroBar?: string; readonly closing?: string; readonly instrument?: string; readonly plate?: string; readonly blocks?: string
  readonly temperature?: string; readonly places?: readonly string[]; readonly replaces?: string; readonly asFound?: true; readonly note?: string; readonly person?: string; readonly dryRun?: true
}

export async function inspectRecordCommand(file: string | undefined, { data, bar = [], person = '', dryRun, json, method, ...given }: RecordOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const readings = [...(file === undefined ? [] : readingsOf(await readBytes(file), units)), ...bar.flatMap(readingsOn)]
    if (readings.length === 0) throw new Refusal('field-missing', { field: 'readings', given: null, needed: 'a file, or --bar' })
    const recorded = await recordCheck(store, { ...given, method, readings }, makerFor(person, device), { dryRun: dryRun === true })
    out.answer(json ? `${JSON.stringify(recorded)}\n` : checkText({ ...recorded, bars: await barsNamedIn(store, recorded.check), replacedBy: null }, units, out.columns))
    for (const { text, ...finding } of recorded.asks) out.say(`'${plainText(text)}': ${sayFinding(finding, units)}\n`)
    out.say(dryRun ? 'Nothing was kept.\n' : `Kept as check ${recorded.check.id}.\n`)
  })
}

/** `ABCD2345 +3 +4 +2`: the bar, then its readings from the marked end. */
function readingsOn(text: string): readonly TypedReading[] {
  const [bar = '', ...readings] = text.trim().split(/\s+/)
  return readings.map((reading) => ({ bar, reading }))
}

function readingsOf(bytes: Buffer, units: Units): readonly TypedReading[] {
  try {
    return readingsFromCsv(bytes)
  } catch (error) {
    throw error instanceof Refusal && error.code === 'csv-not-imported' ? new SaidRefusal(complained(error, units)) : error
  }
}
