import { linesSaid } from '#cli/commands/rack-list.ts'
import type { Out } from '#cli/out.ts'
import type { AddOptions } from '#cli/program.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { makerFor } from '#tasks/maker.ts'
import { addBars } from '#tasks/rack/add-bars.ts'

export async function rackAddCommand({ data, ...asked }: AddOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const added = await addBars(store, asked, makerFor('', device))
    out.answer(linesSaid(added, units))
    out.say('In the rack as "look first", sizes as marked: look over and measure before they carry anything that matters.\n')
  })
}
