import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { writeText } from '#cli/write-text.ts'
import { exportRack } from '#tasks/rack/export-rack.ts'
import { exportRackFile } from '#tasks/rack/rack-file.ts'

export async function rackExportCommand(file: string | undefined, { data, json }: JsonOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const text = json ? `${JSON.stringify(await exportRackFile(store))}\n` : await exportRack(store)
    if (file === undefined || file === '-') out.answer(text)
    else {
      await writeText(file, text)
      out.say(`Written to ${file}.\n`)
    }
  })
}
