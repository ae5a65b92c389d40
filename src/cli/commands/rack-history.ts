import { Refusal } from '#model/refusal.ts'
import { complained } from '#cli/complained.ts'
import type { DataOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { readBytes } from '#cli/read-json.ts'
import { SaidRefusal } from '#cli/run-to-its-end.ts'
import { withShop } from '#cli/with-shop.ts'
import { writeText } from '#cli/write-text.ts'
import { exportHistoryCsv, importHistoryCsv } from '#tasks/rack/history-file.ts'

export type HistoryOptions = DataOptions & { readonly in?: true; readonly dryRun?: true }

export async function rackHistoryCommand(file: string | undefined, { data, in: takeIn, dryRun }: HistoryOptions, out: Out): Promise<void> {
  const csv = takeIn ? await readBytes(file ?? '-') : null
  await withShop(data, async (store, { units }) => {
    if (csv === null) {
      const text = await exportHistoryCsv(store)
      if (file === undefined || file === '-') { out.answer(text); return }
      await writeText(file, text)
      out.say(`Written to ${file}.\n`)
      return
    }
    try {
      const { events, known } = await importHistoryCsv(store, csv, { dryRun: dryRun === true })
      out.answer(`${dryRun ? 'Would come in' : 'In the shop'}: ${events - known} new of ${events}.\n`)
    } catch (error) {
      throw error instanceof Refusal && error.code === 'csv-not-imported' ? new SaidRefusal(complained(error, units)) : error
    }
  })
}
