import { useEffect, useState } from 'react'
import type { HistoryEntry } from '#model/history.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { ask } from '#web/api.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'

/** Everything that was written down about a bar, oldest first; asked of the shop anew when there is news of it. */
export function useBarHistory({ record: { id, saw } }: RackBar, { events, checks }: ShopSnapshot): readonly HistoryEntry[] | 'asking' | 'away' {
  const [entries, setEntries] = useState<readonly HistoryEntry[] | 'asking' | 'away'>('asking')
  const news = `${JSON.stringify(saw)} ${events.length} ${checks.length}`
  useEffect(() => {
    let left = false
    ask<readonly HistoryEntry[]>(`/api/history/bar/${id}`).then((answer) => { if (!left) setEntries(answer) }, () => { if (!left) setEntries('away') })
    return () => { left = true }
  }, [id, news])
  return entries
}
