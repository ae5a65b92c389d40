import { inColumns, plainText } from '#cli/columns.ts'
import type { JsonOptions } from '#cli/options.ts'
import type { Out } from '#cli/out.ts'
import { device, withShop } from '#cli/with-shop.ts'
import { recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { makerFor } from '#tasks/maker.ts'
import { holdingsOf, signBarsOut, type Signed, takeBarsBack } from '#tasks/rack/sign-bars.ts'

export type OutOptions = JsonOptions & { readonly vise?: string; readonly person?: string; readonly machine?: string; readonly otherShop?: string; readonly due?: string; readonly by?: string }
export type BackOptions = JsonOptions & { readonly how: 'fine' | 'nicked' | 'drilled' | 'not looked at'; readonly by?: string }

export async function rackOutCommand(bars: readonly string[], { data, json, due, by = '', ...to }: OutOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => {
    if (bars.length === 0) { await tellHoldings(store, json === true, out); return }
    tell(await signBarsOut(store, { ...to, bars, ...(due === undefined ? {} : { dueOn: due }) }, makerFor(by, device)), 'Signed out', json === true, out)
  })
}

export async function rackBackCommand(bars: readonly string[], { data, json, how, by = '' }: BackOptions, out: Out): Promise<void> {
  await withShop(data, async (store) => { tell(await takeBarsBack(store, { bars, how }, makerFor(by, device)), `Back, ${how}`, json === true, out) })
}

function tell(signed: Signed, what: string, json: boolean, out: Out): void {
  if (json) { out.answer(`${JSON.stringify(signed)}\n`); return }
  out.answer(`${what}: ${signed.bars.map(({ name, code }) => plainText(`${name} ${code}`.trim())).join(', ')}.\n`)
  if (signed.clashes.length > 0) out.say('Someone else did it at the same time: look which of the two stands ("twinrest rack out").\n')
}

async function tellHoldings(store: Store, json: boolean, out: Out): Promise<void> {
  const holdings = await holdingsOf(store)
  if (json) { out.answer(`${JSON.stringify(holdings)}\n`); return }
  const bars = new Map((await recordsOf(store, 'bar')).map((bar) => [bar.id, plainText(`${bar.name} ${bar.code}`.trim())])), vises = new Map((await recordsOf(store, 'vise')).map(({ id, name }) => [id, name]))
  out.answer(inColumns(holdings.flatMap(({ where, bars: held }) => held.map(({ id, sinceIso, dueOn, isOverdue }) => [
    plainText(where.at === 'vise' ? vises.get(where.viseId) ?? '' : where.who), bars.get(id) ?? '', sinceIso?.slice(0, 10) ?? '', dueOn === null ? '' : `back by ${dueOn}`, isOverdue ? 'overdue' : '',
  ]))))
  out.say(holdings.length === 0 ? 'Every bar is in its slot.\n' : `${holdings.reduce((sum, { overdue }) => sum + overdue, 0)} overdue\n`)
}
