import { useEffect, useState } from 'react'
import type { HistoryEntry } from '#model/history.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { ask } from '#web/api.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'

export type Histories = ReadonlyMap<string, readonly HistoryEntry[]>

/** Everything that was written down about some bars, by their ids; asked of the shop, and anew when there is news of them. */
export function useHistories(bars: readonly RackBar[], { events, checks }: ShopSnapshot): Histories | 'asking' | 'away' {
  const [histories, setHistories] = useState<Histories | 'asking' | 'away'>('asking')
  const ids = bars.map(({ record }) => record.id).join(' '), news = `${bars.map(({ record }) => JSON.stringify(record.saw)).join(' ')} ${events.length} ${checks.length}`
  useEffect(() => {
    let left = false
    Promise.all(ids.split(' ').filter((id) => id !== '').map(async (id) => [id, await ask<readonly HistoryEntry[]>(`/api/history/bar/${id}`)] as const))
      .then((answers) => { if (!left) setHistories(new Map(answers)) }, () => { if (!left) setHistories('away') })
    return () => { left = true }
  }, [ids, news])
  return histories
}
