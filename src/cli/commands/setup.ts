import { basename } from 'node:path'
import type { Side } from '#model/part.ts'
import type { ShopRecord } from '#model/shop-record.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { readPartFile, type PartFile } from '#cli/part-file.ts'
import { readJsonFile } from '#cli/read-json.ts'
import { setupText } from '#cli/setup-text.ts'
import { withShop } from '#cli/with-shop.ts'
import { writeText } from '#cli/write-text.ts'
import type { Store } from '#store/store.ts'
import { chooseFromCase, type SetupAtVise } from '#tasks/setup/choose-for-vise.ts'
import { setupInText, setupSvg } from '#tasks/setup/draw-setup.ts'
import { viseNamed } from '#tasks/setup/vise-named.ts'

export type SetupOptions = JsonOptions & { readonly vise?: string; readonly svg?: string; readonly foretell?: Side }

/** Choices and rejections that the text is made from; the data has all of them. */
const limits = { most: 40, rejectedMost: 400 }

export async function setupCommand(file: string, options: SetupOptions, out: Out): Promise<void> {
  const part = readPartFile(await readJsonFile(file))
  await withShop(options.data, async (store, { units }: ShopRecord) => {
    const at = await chosen(store, part, options)
    const [first = null] = at.answer.choices, title = `Setup of ${file === '-' ? 'a part' : basename(file)}`
    if (options.svg !== undefined) {
      await writeText(options.svg, setupSvg(at, first, title, units))
      out.say(`Drawn into ${options.svg}.\n`)
    }
    out.answer(options.json ? `${JSON.stringify(at)}\n` : setupText(at, setupInText(at, first, title, units, out.columns), units, out.columns))
  })
}

/** At the vise named on the command line, else the one the file brings or names, else the only one or the one used last. */
async function chosen(store: Store, { vise, rest }: PartFile, options: SetupOptions): Promise<SetupAtVise> {
  const more = options.json ? {} : limits, also = options.foretell === undefined ? {} : { foretell: options.foretell }
  if (options.vise === undefined && typeof vise === 'object' && vise !== null) return await chooseFromCase(store, null, { ...rest, vise, ...more }, also)
  const named = await viseNamed(store, options.vise ?? (typeof vise === 'string' ? vise : null))
  return await chooseFromCase(store, named.id, { ...rest, ...more }, also)
}
