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
        {lacks === 'bars' ? null : <li><p>The {vise}: the height of its jaws above the bed, and how far it opens.</p><div className="actions"><Link to="/shop/vise/new" className="action main">Add a {vise}</Link></div></li>}
        {lacks === 'vises' ? null : (
          <li>
            <p>The bars: height, thickness and length of each pair.</p>
            <div className="actions">
              <Link to="/rack/new" className={lacks === 'bars' ? 'action main' : 'action'}>Add the bars you have</Link>
              <Link to="/rack/import" className="action">Bring them in from a list (CSV)</Link>
            </div>
          </li>
        )}
        <li><p>Then Set up asks for the height of a part and what comes off its top, and says which pair carries it.</p></li>
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
