import { inColumns, plainText } from '#cli/columns.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { withShop } from '#cli/with-shop.ts'
import { lifeOfBar } from '#tasks/rack/life-of-bar.ts'
import { sayFinding } from '#words/say-finding.ts'

export type LifeOptions = JsonOptions & { readonly mates?: true }

export async function rackLifeCommand(bar: string, { data, mates, json }: LifeOptions, out: Out): Promise<void> {
  await withShop(data, async (store, { units }) => {
    const life = await lifeOfBar(store, bar, { withMates: mates === true })
    if (json) { out.answer(`${JSON.stringify(life)}\n`); return }
    const codes = new Map(life.bars.map(({ record }) => [record.id, record.code]))
    out.answer(inColumns(life.lines.map(({ atIso, person, bars, says }) => [atIso.slice(0, 10), plainText(person), ...(mates ? [bars.map((id) => codes.get(id) ?? '').join(' ')] : []), plainText(sayFinding(says, units))])))
    for (const { record, condition: { trust, open, due, magnetised } } of life.bars)
      out.say(`${record.code}: ${trust}${open.length > 0 ? ` (${open.join(', ')})` : ''}${magnetised ? ', to be demagnetised' : ''}${due?.onDay ? `, due ${due.onDay}` : ''}\n`)
  })
}
