import { Link } from '#web/parts/link.tsx'
import { useRoute } from '#web/router.ts'
import { useShop } from '#web/shop-store.ts'

/** A device that was let in and is not any more: what to do, while everything on it stays. */
export function Stranger() {
  const { shop, server } = useShop(), { place, rest } = useRoute()
  if (server !== 'stranger' || shop === null || (place === 'shop' && rest[0] === 'enrol')) return null
  return (
    <p className="strip no-print" role="alert">
      <span>The shop does not let this device in any more. What is shown is as it last was; what you do stays on this device until it is enrolled again.</span>
      <Link to="/shop/enrol" className="press">Enrol this device</Link>
    </p>
  )
}
