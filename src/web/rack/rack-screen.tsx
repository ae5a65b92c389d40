import type { ShopSnapshot } from '#model/snapshot.ts'

export function RackScreen({ shop }: { readonly shop: ShopSnapshot; readonly rest: readonly string[] }) {
  return <div className="page"><h1>Rack</h1><p>{shop.bars.length}</p></div>
}
