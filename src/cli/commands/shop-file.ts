import type { DataOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { readJsonFile } from '#cli/read-json.ts'
import { withShop } from '#cli/with-shop.ts'
import { writeText } from '#cli/write-text.ts'
import { exportShop, importShop } from '#tasks/shop/backup/shop-file.ts'

export async function exportCommand(file: string | undefined, { data }: DataOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const text = `${JSON.stringify(await exportShop(store))}\n`
    if (file === undefined || file === '-') return out.answer(text)
    await writeText(file, text)
    out.say(`Written to ${file}.\n`)
  })
}

export async function importCommand(file: string, { data }: DataOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    const { changes, checks, events } = await importShop(store, await readJsonFile(file))
    out.say(`The shop of ${file} is in: ${changes} changes, ${checks} checks, ${events} events.\n`)
  })
}
