import type { ShopSnapshot } from '#model/snapshot.ts'
import type { RackGroup } from '#web/rack/rack-bars.ts'
export function RegrindScreen({ shop }: { readonly shop: ShopSnapshot; readonly groups: readonly RackGroup[]; readonly first: string | null }) { return <div className="page"><h1>{shop.shop.name}</h1></div> }
