import { useState } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { Link } from '#web/parts/link.tsx'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { sayDay } from '#web/rack/say-bar.ts'
import { sayHistory } from '#web/rack/say-history.ts'
import { useBarHistory } from '#web/rack/use-bar-history.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly bar: RackBar; readonly shop: ShopSnapshot }

/** All that was written down about a bar, latest first; asked of the shop when it is opened. */
export function BarHistory({ bar, shop }: Props) {
  const [open, setOpen] = useState(false)
  return (
    <details className="sum" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>History</summary>
      {open ? <Entries bar={bar} shop={shop} /> : null}
    </details>
  )
}

function Entries({ bar, shop }: Props) {
  const units = useUnits(), { record: { id } } = bar, entries = useBarHistory(bar, shop)
  if (entries === 'asking') return <output>Asking the shop</output>
  if (entries === 'away') return <p>The history is kept by the shop’s server, which does not answer just now.</p>
  return (
    <>
      <p><Link to={`/rack/${id}/life`}>The whole life on one page, to print</Link></p>
      <ol className="rows">
        {entries.toReversed().map((entry) => (
          <li key={entry.id} className="name-text"><span className="small">{sayDay(entry.atIso)} · {entry.person || '–'}</span><br />{entry.what === 'check' && entry.check.method !== 'stated' ? <Link to={`/inspect/done/${entry.check.id}`}>{sayHistory(entry, id, shop, units)}</Link> : sayHistory(entry, id, shop, units)}</li>
        ))}
      </ol>
    </>
  )
}
