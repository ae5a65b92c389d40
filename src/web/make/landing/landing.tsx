import { sayHours } from '#words/say-make.ts'
import type { JobRecord } from '#model/job-record.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { routeWords, sayStep } from '#words/say-make.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { useJobKnown, useJobView } from '#web/make/facts.ts'
import { beginJob, dropJob, newOrder } from '#web/make/job-edits.ts'
import { sayJob, sayOrder } from '#web/make/say-job.ts'
import { Link } from '#web/parts/link.tsx'
import { go } from '#web/router.ts'
import { AskPerson } from '#web/shell/ask-person.tsx'
import { useUnits } from '#web/units.ts'

/** What is being made, what is still being written, and what was made. */
export function Landing({ shop }: { readonly shop: ShopSnapshot }) {
  const open = shop.jobs.filter(({ state }) => state === 'open'), going = open.filter(({ route }) => route !== null), orders = open.filter(({ route }) => route === null), done = shop.jobs.filter(({ state }) => state === 'done')
  return (
    <>
      <AskPerson />
      <div className="page">
        <div className="mk-title">
          <h1>Make</h1>
          <div className="mk-prints"><Link to="/rack/regrind" className="action">Regrind worn ones</Link><button type="button" className="action main" onClick={() => go(`/make/order/${beginJob(newOrder(shop))}`)}>New order</button></div>
        </div>
        {open.length + done.length === 0 ? (
          <section className="empty">
            <p>Say which heights are missing; the ways to them stand side by side with what they cost, what may be expected of them and what speaks against them. Then step by step from the stock to the rack.</p>
            <p>Machines, stock and what an hour costs are kept in <Link to="/shop">Shop</Link>.</p>
          </section>
        ) : null}
        {going.length > 0 ? <section aria-labelledby="going"><h2 id="going">In work</h2><ul className="rows">{going.map((job) => <JobRow key={job.id} job={job} shop={shop} />)}</ul></section> : null}
        {orders.length > 0 ? <section aria-labelledby="orders"><h2 id="orders">Orders being written</h2><ul className="rows">{orders.map((job) => <OrderRow key={job.id} job={job} />)}</ul></section> : null}
        {done.length > 0 ? <section aria-labelledby="made"><h2 id="made">Made</h2><ul className="rows">{done.map((job) => <JobRow key={job.id} job={job} shop={shop} />)}</ul></section> : null}
      </div>
    </>
  )
}

function JobRow({ job, shop }: { readonly job: JobRecord; readonly shop: ShopSnapshot }) {
  const units = useUnits(), known = useJobKnown(shop), view = useJobView(job, shop, known)
  return (
    <li className="mk-row">
      <Link to={`/make/job/${job.id}`} className="mk-row-go">
        <strong className="name-text">{sayJob(job, units)}</strong>
        <span className="small">{[routeWords[job.route!], job.name ? sayOrder(job, units) : ''].filter((text) => text !== '').join(' · ')}</span>
        {view instanceof Refusal ? <span className="status--danger">{sayRefusal(view, units)}</span> : <Progress {...view.plan} />}
      </Link>
    </li>
  )
}

function Progress({ steps, next, hours }: { readonly steps: readonly { readonly state: string }[]; readonly next: Parameters<typeof sayStep>[0] | null; readonly hours: { readonly left: number } }) {
  const units = useUnits(), done = steps.filter(({ state }) => state === 'done').length
  return <span className="mk-progress"><meter min={0} max={steps.length} value={done} aria-label="Steps done" /><span>{done} of {steps.length} steps{next === null ? '' : ` · next: ${sayStep(next)} · ${sayHours(hours.left, units)} left`}</span></span>
}

function OrderRow({ job }: { readonly job: JobRecord }) {
  const units = useUnits()
  return (
    <li className="mk-row">
      <Link to={`/make/order/${job.id}`} className="mk-row-go"><strong className="name-text">{sayJob(job, units)}</strong>{job.name ? <span className="small">{sayOrder(job, units)}</span> : null}</Link>
      <button type="button" className="press" aria-label={`Drop the order ${sayJob(job, units)}`} onClick={() => dropJob(job, sayJob(job, units))}>Drop</button>
    </li>
  )
}
