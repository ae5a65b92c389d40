import type { BarRecord } from '#model/bar-record.ts'
import { wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { newId } from '#web/new-id.ts'
import { SelectField } from '#web/parts/select-field.tsx'
import { type RackBar, type RackGroup, rackGroups } from '#web/rack/rack-bars.ts'
import { nameOfBar } from '#web/rack/say-bar.ts'
import { useUnits } from '#web/units.ts'
import type { Edit } from '#web/write.ts'

/** With whom a bar is to be used from now on. */
export type MatesWish = { readonly kind: 'as it is' } | { readonly kind: 'odd' } | { readonly kind: 'join'; readonly matesId: string } | { readonly kind: 'pair'; readonly bar: string }

/** Bars further apart than this are no mates, whatever the use. Common practice, no source. */
const nearMm = 0.2

/** Bars of about the same height, to be this one's mates. Only bars that are named as mates are ever proposed as a pair. */
export function MatesField({ shop, bar, value, onChange }: { readonly shop: ShopSnapshot; readonly bar: RackBar; readonly value: MatesWish; readonly onChange: (wish: MatesWish) => void }) {
  const units = useUnits()
  const near = rackGroups(shop).filter(({ key, bars: [first] }) => key !== (bar.record.matesId ?? bar.record.id) && first.trust !== 'gone'
    && first.heightMm !== null && bar.heightMm !== null && Math.abs(first.heightMm - bar.heightMm) <= nearMm)
  const wishOf = (group: RackGroup): MatesWish => (group.bars[0].record.matesId === null ? { kind: 'pair', bar: group.bars[0].record.id } : { kind: 'join', matesId: group.key })
  const calledOf = ({ bars: [first] }: RackGroup): string => {
    const name = first.mates?.name ? `${wordLength(first.calledMm!, units)} ${first.mates.name}` : nameOfBar(first, units)
    return first.slot ? `${name}, ${first.slot.name}` : name
  }
  const choices: readonly (readonly [MatesWish, string])[] = [
    [{ kind: 'as it is' }, bar.record.matesId === null ? 'odd: no mates' : `as it is: ${bar.mates?.name || 'mates'}`],
    ...(bar.record.matesId === null ? [] : [[{ kind: 'odd' }, 'odd: no mates'] as const]),
    ...near.map((group) => [wishOf(group), `with ${calledOf(group)}`] as const),
  ]
  return (
    <SelectField
      label="used as mates with" value={JSON.stringify(value)} onChange={(wish) => onChange(JSON.parse(wish) as MatesWish)}
      options={choices.map(([wish, label]) => ({ value: JSON.stringify(wish), label }))}
    />
  )
}

export function matesWished(wish: MatesWish, record: BarRecord): { readonly matesId: string | null; readonly edits: readonly Edit[] } {
  switch (wish.kind) {
    case 'as it is': return { matesId: record.matesId, edits: [] }
    case 'odd': return { matesId: null, edits: [] }
    case 'join': return { matesId: wish.matesId, edits: [] }
    case 'pair': {
      const matesId = newId()
      return { matesId, edits: [{ kind: 'mates', record: matesId, fields: { name: '', note: '' } }, { kind: 'bar', record: wish.bar, fields: { matesId } }] }
    }
  }
}
