import { linesSaid } from '#cli/commands/rack-list.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { findInRack } from '#tasks/rack/find-in-rack.ts'

export async function rackFindCommand(typed: string, { data, json }: JsonOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const lines = await findInRack(store, typed)
    out.answer(json ? `${JSON.stringify(lines)}\n` : linesSaid(lines, units))
    if (!json) out.say(lines.length === 0 ? 'No bar is meant by that.\n' : `${lines.length} ${lines.length === 1 ? 'bar' : 'bars'}, sizes in ${units.length}; * measured here\n`)
  })
}
