import type { ShopSnapshot } from '#model/snapshot.ts'
import type { ViseRecord } from '#model/vise-record.ts'

export function ViseCardPage({ vise }: { readonly shop: ShopSnapshot; readonly vise: ViseRecord }) {
  return <div className="page"><h1>{vise.name}</h1></div>
}
