import { useEffect, useState } from 'react'
import type { HistoryEntry } from '#model/history.ts'
import { ask } from '#web/api.ts'
import { Link } from '#web/parts/link.tsx'
import { sayDay } from '#web/rack/say-bar.ts'
import { sayHistory } from '#web/rack/say-history.ts'
import { useShop } from '#web/shop-store.ts'
import { useUnits } from '#web/units.ts'

/** All that was written down about a bar, latest first; asked of the shop when it is opened. `seen` changes when there is news. */
export function BarHistory({ id, seen }: { readonly id: string; readonly seen: string }) {
  const [open, setOpen] = useState(false)
  return (
    <details className="sum" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>History</summary>
      {open ? <Entries id={id} key={seen} /> : null}
    </details>
  )
}

function Entries({ id }: { readonly id: string }) {
  const { shop } = useShop(), units = useUnits()
  const [entries, setEntries] = useState<readonly HistoryEntry[] | 'asking' | 'away'>('asking')
  useEffect(() => { ask<readonly HistoryEntry[]>(`/api/history/bar/${id}`).then(setEntries, () => setEntries('away')) }, [id])
  if (entries === 'asking') return <output>Asking the shop</output>
  if (entries === 'away' || shop === null) return <p>The history is kept by the shop’s server, which does not answer just now.</p>
  return (
    <ol className="rows">
      {entries.toReversed().map((entry) => (
        <li key={entry.id} className="name-text"><span className="small">{sayDay(entry.atIso)} · {entry.person || '–'}</span><br />{entry.what === 'check' && entry.check.method !== 'stated' ? <Link to={`/inspect/done/${entry.check.id}`}>{sayHistory(entry, id, shop, units)}</Link> : sayHistory(entry, id, shop, units)}</li>
      ))}
    </ol>
  )
}
