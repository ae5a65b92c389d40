import { careCard } from '#drafting/rack/care-card.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { careWords } from '#words/say-care.ts'
import { PrintFrame } from '#web/parts/print-frame.tsx'

/** How bars are kept, to cut out and hang by the rack. */
export function CareCardPage({ shop: { shop } }: { readonly shop: ShopSnapshot }) {
  return <PrintFrame title={careWords.title} back={{ to: '/rack', name: 'Rack' }} size={shop.paper} pages={[careCard({ ...careWords, shop: shop.name }, shop.paper)]} />
}
