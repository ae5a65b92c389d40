import { checksFileSchema } from '#model/checks-file.ts'
import { readAs } from '#model/read-as.ts'
import { Refusal } from '#model/refusal.ts'
import { complained } from '#cli/complained.ts'
import type { DataOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { parseJson, readBytes } from '#cli/read-json.ts'
import { SaidRefusal } from '#cli/run-to-its-end.ts'
import { withShop } from '#cli/with-shop.ts'
import { type ChecksGiven, importChecks } from '#tasks/inspect/import-checks.ts'
import { sayFinding } from '#words/say-finding.ts'

export type ImportChecksOptions = DataOptions & { readonly dryRun?: true }

export async function inspectImportCommand(file: string, { data, dryRun }: ImportChecksOptions, out: Out): Promise<void> {
  const bytes = await readBytes(file)
  await withShop(data, async (store, { units }) => {
    try {
      const { checks, known, readings, bars, notes } = await importChecks(store, givenIn(bytes, file), { dryRun: dryRun === true })
      out.answer([
        `${dryRun ? 'Would come in' : 'In the shop'}: ${checks - known} ${checks - known === 1 ? 'check' : 'checks'}${known > 0 ? `; ${known} ${known === 1 ? 'was' : 'were'} there already` : ''}. ${readings} readings of ${bars} ${bars === 1 ? 'bar' : 'bars'} in the file.`,
        ...notes.map((note) => sayFinding(note, units)), ...(dryRun ? ['Nothing was changed.'] : []),
      ].map((line) => `${line}\n`).join(''))
    } catch (error) {
      throw error instanceof Refusal && error.code === 'csv-not-imported' ? new SaidRefusal(complained(error, units)) : error
    }
  })
}

/** Data begins with a brace, a table never does: its first line has the heads. */
function givenIn(bytes: Buffer, file: string): ChecksGiven {
  return /^\uFEFF?\s*\{/.test(bytes.subarray(0, 100).toString('utf8')) ? { file: readAs(checksFileSchema, parseJson(bytes.toString('utf8'), file)) } : { csv: bytes }
}
