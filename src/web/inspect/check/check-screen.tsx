import type { ShopSnapshot } from '#model/snapshot.ts'
import { CheckPlate } from '#web/inspect/check/check-plate.tsx'
import { Link } from '#web/parts/link.tsx'
import { useUnits } from '#web/units.ts'

/** A check being made. Whoever opens its address goes on with it. */
export function CheckScreen({ shop, id }: { readonly shop: ShopSnapshot; readonly id: string }) {
  const units = useUnits(), draft = shop.drafts.find((one) => one.id === id && one.state === 'open')
  if (draft) return <CheckPlate key={`${id} ${units.length}`} shop={shop} draft={draft} />
  const kept = shop.drafts.find((one) => one.id === id)?.checkId ?? null
  return (
    <div className="page">
      <h1>This check is not open</h1>
      <p>It was kept or dropped{kept === null ? ', here or on another device' : ''}.</p>
      <p>{kept === null ? <Link to="/inspect">See all checks</Link> : <Link to={`/inspect/done/${kept}`}>See what came out</Link>}</p>
    </div>
  )
}
