import { useState } from 'react'
import { type Facts, Refusal } from '#model/refusal.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { ask, Away } from '#web/api.ts'
import { Link } from '#web/parts/link.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { refresh } from '#web/shop-store.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** What a shop without vises or bars does first, and the invented demo shop at one tap. */
export function EmptyShop({ lacks }: { readonly lacks: 'vises' | 'bars' | 'both' }) {
  const { vise } = useTerms(), units = useUnits()
  const [said, setSaid] = useState<string | null>(null), [loading, setLoading] = useState(false)
  const load = async () => {
    setLoading(true)
    try { await ask('/api/demo', {}); await refresh() } catch (error) { setSaid(sayTrouble(error, (refused) => sayRefusal(refused, units))) } finally { setLoading(false) }
  }
  return (
    <section className="empty">
      <h2>{lacks === 'vises' ? `First a ${vise}` : lacks === 'bars' ? 'First some bars' : 'An empty shop'}</h2>
      <ol className="steps">
        {lacks === 'bars' ? null : <li><Link to="/shop/vise/new">Add a {vise}</Link>: the height of its jaws above the bed, and how far it opens.</li>}
        {lacks === 'vises' ? null : <li><Link to="/rack/new">Add the bars you have</Link>, or <Link to="/rack/import">bring them in from a list</Link> (CSV).</li>}
        <li>Then <Link to="/setup">set up</Link>: give the height of a part and what comes off its top, and see which pair carries it.</li>
      </ol>
      <p>To look around first, load the demo shop: invented {vise}s, bars and parts that you can play with.</p>
      <div className="actions"><button type="button" className="action" disabled={loading} onClick={() => void load()}>{loading ? 'Loading the demo shop' : 'Load the demo shop'}</button></div>
      {said ? <StatusLine danger>{said}</StatusLine> : null}
    </section>
  )
}

function sayTrouble(error: unknown, say: (refused: { code: string; facts: Facts }) => string): string {
  if (error instanceof Refusal) return say(error)
  if (error instanceof Away) return 'The shop’s server does not answer, and the demo shop comes from there. Start it and try again.'
  throw error
}
