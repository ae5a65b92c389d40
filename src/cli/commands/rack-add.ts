import { linesSaid } from '#cli/commands/rack-list.ts'
import type { DataOptions, UnitOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { makerFor } from '#tasks/maker.ts'
import { addBars } from '#tasks/rack/add-bars.ts'

export type AddOptions = DataOptions & UnitOptions & {
  readonly height: string; readonly thickness: string; readonly length: string
  readonly pair?: true; readonly slot?: string; readonly name?: string
}

export async function rackAddCommand({ data, ...asked }: AddOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const added = await addBars(store, asked, makerFor('', device))
    out.answer(linesSaid(added, units))
    out.say('In the rack as "look first", sizes as marked: look over and measure before they carry anything that matters.\n')
  })
}
