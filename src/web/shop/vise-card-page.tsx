import { useMemo, useState } from 'react'
import { viseCardPages } from '#drafting/setup/vise-card.ts'
import { viseCardFrom } from '#engine/rack/vise-card.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { sayViseCard } from '#words/say-vise-card.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { Link } from '#web/parts/link.tsx'
import { Paper } from '#web/parts/paper.tsx'
import { today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'

/** The black strip to hang by a vise: what every pair is good for there. It works with no tablet. */
export function ViseCardPage({ shop, vise }: { readonly shop: ShopSnapshot; readonly vise: ViseRecord }) {
  const units = useUnits(), { paper } = shop.shop
  const [day] = useState(() => new Date().toLocaleDateString(undefined, { day: 'numeric', month: 'long', year: 'numeric' }))
  const pages = useMemo(() => viseCardPages(sayViseCard(viseCardFrom(vise, { ...shop, today: today() }), day, units), paper), [shop, vise, day, units, paper])
  return (
    <div className="page">
      <header className="no-print card-head">
        <Link to="/shop" className="back">Shop</Link>
        <h1 className="name-text">Card of {vise.name}</h1>
        <p>Print it on {paper}, cut it out and hang it by the {units.words === 'UK' ? 'vice' : 'vise'}. Print it anew when pairs or jaws change.</p>
        <div className="actions"><button type="button" className="action main" onClick={() => print()}>Print</button></div>
      </header>
      {pages.map((page, at) => <Paper key={at} size={paper}><Drawing scene={page} medium="print" /></Paper>)}
    </div>
  )
}
