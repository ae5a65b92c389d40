import type { ShopSnapshot } from '#model/snapshot.ts'

export function SetupScreen({ shop }: { readonly shop: ShopSnapshot; readonly rest: readonly string[] }) {
  return <div className="page"><h1>Set up</h1><p>{shop.vises.length}</p></div>
}
