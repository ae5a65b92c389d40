import type { RecordKind, Saw } from '#model/change.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'

/** A field that two people changed without seeing each other, until somebody has chosen. */
export type OpenClash = { readonly kind: RecordKind; readonly record: string; readonly field: string }

/** All of them in the shop: the record itself carries every change that nobody has followed yet. */
export function openClashes({ shop, people, vises, slots, mates, bars, parts, setups, instruments, drafts, outcomes, machines, stock, jobs }: ShopSnapshot): readonly OpenClash[] {
  const records: readonly (readonly [RecordKind, readonly { readonly id: string; readonly saw: Saw }[]])[] = [
    ['shop', [shop]], ['person', people], ['vise', vises], ['slot', slots], ['mates', mates], ['bar', bars], ['part', parts], ['setup', setups],
    ['instrument', instruments], ['draft', drafts], ['outcome', outcomes], ['machine', machines], ['stock', stock], ['job', jobs],
  ]
  return records.flatMap(([kind, list]) => list.flatMap(({ id, saw }) =>
    Object.entries(saw).filter(([, changes]) => changes.length > 1).map(([field]) => ({ kind, record: id, field }))))
}
