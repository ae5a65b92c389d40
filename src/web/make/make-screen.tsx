import { useEffect, useRef } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { Landing } from '#web/make/landing/landing.tsx'
import { OrderScreen } from '#web/make/order/order-screen.tsx'
import { beginJob, newOrder } from '#web/make/job-edits.ts'
import { arriving } from '#web/parts/arriving.ts'
import { Link } from '#web/parts/link.tsx'
import { go } from '#web/router.ts'
import '#web/styles/make.css'

const JobScreen = arriving(async () => (await import('#web/make/job/job-screen.tsx')).JobScreen)
const RouteSheetPage = arriving(async () => (await import('#web/make/print/route-sheet-page.tsx')).RouteSheetPage)
const CutListPage = arriving(async () => (await import('#web/make/print/cut-list-page.tsx')).CutListPage)
const BuyingListPage = arriving(async () => (await import('#web/make/print/buying-list-page.tsx')).BuyingListPage)

type Props = { readonly shop: ShopSnapshot; readonly rest: readonly string[] }

/** From a missing height to bars in the rack: orders, the ways to them, and the work step by step. */
export function MakeScreen({ shop, rest: [first, id, what] }: Props) {
  const job = shop.jobs.find((one) => one.id === id)
  if (first === undefined) return <Landing shop={shop} />
  if (first === 'new') return <NewOrder shop={shop} heights={id ?? ''} />
  if (first === 'order' && job?.route === null) return <OrderScreen shop={shop} job={job} />
  if ((first === 'order' || first === 'job') && job !== undefined && job.route !== null) {
    if (what === 'sheet') return <RouteSheetPage shop={shop} job={job} />
    if (what === 'cuts') return <CutListPage shop={shop} job={job} />
    return what === 'buying' ? <BuyingListPage shop={shop} job={job} /> : <JobScreen shop={shop} job={job} step={what} />
  }
  if (first === 'job' && job !== undefined) return <OrderScreen shop={shop} job={job} />
  return <div className="page"><h1>There is no such job here</h1><p><Link to="/make">Go to Make</Link></p></div>
}

/** `/make/new/35`: an order with its height filled in, for whoever found that it is missing. */
function NewOrder({ shop, heights }: { readonly shop: ShopSnapshot; readonly heights: string }) {
  const begun = useRef(false)
  useEffect(() => {
    if (begun.current) return
    begun.current = true
    go(`/make/order/${beginJob(newOrder(shop, { heights }))}`, { replace: true })
  }, [shop, heights])
  return <output className="page">Opening</output>
}
