import { canonical } from '#model/canonical.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { openClashes } from '#web/keep/open-clashes.ts'
import type { RackBar, RackGroup } from '#web/rack/rack-bars.ts'
import { ClashChoice } from '#web/shell/clash-choice.tsx'

type Props = { readonly bar: RackBar; readonly group: RackGroup; readonly shop: ShopSnapshot }

/** Two people signed the same bar out at once: one stands, and whoever opens the bar is told. Mates that clash alike are settled with it. */
export function WhereClash({ bar: { record }, group, shop }: Props) {
  const clashes = openClashes(shop).filter(({ kind, field }) => kind === 'bar' && field === 'where'), clash = clashes.find((one) => one.record === record.id)
  if (!clash) return null
  const alike = group.bars.filter((mate) => mate.record.id !== record.id && clashes.some((one) => one.record === mate.record.id) && canonical(mate.record.where) === canonical(record.where))
  return <ClashChoice clash={clash} also={alike.map((mate) => mate.record.id)} />
}
