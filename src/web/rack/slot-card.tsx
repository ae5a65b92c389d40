import type { ShopSnapshot } from '#model/snapshot.ts'
import { Link } from '#web/parts/link.tsx'
import type { RackGroup } from '#web/rack/rack-bars.ts'
import { nameOfBar, trustWords } from '#web/rack/say-bar.ts'
import { sayWhere } from '#web/rack/say-where.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly slotId: string; readonly groups: readonly RackGroup[]; readonly shop: ShopSnapshot }

/** What belongs in a slot, and what of it is there. */
export function SlotCard({ slotId, groups, shop }: Props) {
  const units = useUnits(), slot = shop.slots.find(({ id }) => id === slotId)
  if (!slot) return <div className="side-page"><h1>There is no such slot</h1><p><Link to="/rack">See all bars</Link></p></div>
  const bars = groups.flatMap((group) => group.bars).filter(({ record, trust }) => record.slotId === slotId && trust !== 'gone')
  return (
    <div className="side-page">
      <Link to="/rack" className="back">All bars</Link>
      <h1 className="big-line"><strong className="big name-text">{slot.name}</strong> slot</h1>
      <dl className="facts"><div><dt>code</dt><dd>{slot.code}</dd></div></dl>
      {bars.length === 0 ? <p>No bar belongs here.</p> : null}
      <ul>
        {bars.map((bar) => (
          <li key={bar.record.id} className="out-row">
            <Link to={`/rack/${bar.record.id}`} className="out-what">
              <strong className="name-text">{nameOfBar(bar, units)}</strong>
              <span className="small"><span aria-hidden="true">{trustWords[bar.trust].mark}</span> {trustWords[bar.trust].word} · {sayWhere(bar.record.where, shop)}</span>
            </Link>
          </li>
        ))}
      </ul>
    </div>
  )
}
