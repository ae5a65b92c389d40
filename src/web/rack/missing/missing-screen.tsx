import type { ShopSnapshot } from '#model/snapshot.ts'
export function MissingScreen({ shop }: { readonly shop: ShopSnapshot }) { return <div className="page"><h1>{shop.shop.name}</h1></div> }
