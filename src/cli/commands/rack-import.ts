import { idSchema } from '#model/change.ts'
import { withUnit } from '#model/length.ts'
import { readAs } from '#model/read-as.ts'
import type { RackImport } from '#model/rack-import.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { plainText } from '#cli/columns.ts'
import { complained } from '#cli/complained.ts'
import type { DataOptions, UnitOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { parseJson, readBytes } from '#cli/read-json.ts'
import { SaidRefusal } from '#cli/run-to-its-end.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { makerFor } from '#tasks/maker.ts'
import { importRack } from '#tasks/rack/import-rack.ts'
import { importRackFile } from '#tasks/rack/rack-file.ts'
import { sayFinding } from '#words/say-finding.ts'

export type ImportOptions = DataOptions & UnitOptions & { readonly dryRun?: true; readonly id?: string }

/** A file larger than this takes long enough to say what is being done. */
const largeBytes = 100_000

export async function rackImportCommand(file: string, { data, unit, dryRun, id }: ImportOptions, out: Out): Promise<void> {
  const csv = await readBytes(file), isData = /^\uFEFF?\s*\{/.test(csv.subarray(0, 100).toString('utf8'))
  if (isData) { await rackFileIn(csv, file, data, dryRun === true, out); return }
  await withShop(data, async (store, { units }) => {
    const isLarge = csv.length > largeBytes
    const say = (what: string) => { if (isLarge) out.say(`${what} …\n`) }
    say(`reading ${Math.round(csv.length / 1000)} kB`)
    try {
      const by = makerFor('', device)
      out.answer(imported(await importRack(store, { id: id === undefined ? by.newId() : readAs(idSchema, id, 'id'), csv, dryRun: dryRun === true, onRead: (bars) => say(`taking in ${bars} bars`), ...(unit ? { unit } : {}) }, by), units))
    } catch (error) {
      throw error instanceof Refusal && error.code === 'csv-not-imported' ? new SaidRefusal(complained(error, units)) : error
    }
  })
}

/** A whole rack as it was written with `rack export --json`. */
async function rackFileIn(bytes: Buffer, file: string, data: string | undefined, dryRun: boolean, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const { bars, known, events, checks, notes } = await importRackFile(store, parseJson(bytes.toString('utf8'), file), makerFor('', device), { dryRun })
    out.answer([
      `${dryRun ? 'Would come in' : 'In the rack'}: ${bars - known} ${bars - known === 1 ? 'bar' : 'bars'}${known > 0 ? `; ${known} there already` : ''}, with ${events} events and ${checks} checks.`,
      ...notes.map((note) => plainText(sayFinding(note, units))), ...(dryRun ? ['Nothing was changed.'] : []),
    ].map((line) => `${line}\n`).join(''))
  })
}

function imported({ dryRun, bars, mates, newSlots, lowestMm, highestMm, notes }: RackImport, units: Units): string {
  return [
    `${dryRun ? 'Would come in' : 'In the rack'}: ${bars} ${bars === 1 ? 'bar' : 'bars'}, ${mates} ${mates === 1 ? 'group' : 'groups'} of mates, ${withUnit(lowestMm, units)} to ${withUnit(highestMm, units)} high.`,
    ...(newSlots.length > 0 ? [`New slots: ${newSlots.map(plainText).join(', ')}.`] : []),
    ...notes.map((note) => sayFinding(note, units)),
    dryRun ? 'Nothing was changed.' : 'They enter as "look first", sizes as marked.',
  ].map((line) => `${line}\n`).join('')
}
