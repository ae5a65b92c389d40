import type { ShopSnapshot } from '#model/snapshot.ts'

export function ShopScreen({ shop }: { readonly shop: ShopSnapshot; readonly rest: readonly string[] }) {
  return <div className="page"><h1>Shop</h1><p>{shop.vises.length}</p></div>
}
