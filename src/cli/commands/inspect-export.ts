import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { writeText } from '#cli/write-text.ts'
import { exportChecks, exportChecksCsv } from '#tasks/inspect/export-checks.ts'

export type ExportChecksOptions = JsonOptions & { readonly check?: string }

export async function inspectExportCommand(file: string | undefined, { data, json, check }: ExportChecksOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const text = json ? `${JSON.stringify(await exportChecks(store, check))}\n` : await exportChecksCsv(store, check)
    if (file === undefined || file === '-') out.answer(text)
    else {
      await writeText(file, text)
      out.say(`Written to ${file}.\n`)
    }
  })
}
