import type { Out } from '#cli/out.ts'
import type { DataOptions } from '#cli/program.ts'
import { withShop } from '#cli/with-shop.ts'
import { writeText } from '#cli/write-text.ts'
import { exportRack } from '#tasks/rack/export-rack.ts'

export async function rackExportCommand(file: string | undefined, { data }: DataOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const csv = await exportRack(store)
    if (file === undefined || file === '-') out.answer(csv)
    else {
      await writeText(file, csv)
      out.say(`Written to ${file}.\n`)
    }
  })
}
