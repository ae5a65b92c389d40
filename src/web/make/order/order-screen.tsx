import { useMemo } from 'react'
import { routeCase } from '#engine/make/job/job-case.ts'
import { orderFieldOf } from '#engine/make/job/order-from.ts'
import { plannedWithOf } from '#engine/make/job/planned-with.ts'
import { answerRoute } from '#engine/make/route/answer-route.ts'
import { attempt } from '#model/attempt.ts'
import type { JobRecord } from '#model/job-record.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { makingBooks } from '#reference/making-books.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { termsFor } from '#words/terms.ts'
import { useJobKnown } from '#web/make/facts.ts'
import { chooseRoute, dropJob, nameJob } from '#web/make/job-edits.ts'
import { OrderFields } from '#web/make/order/order-fields.tsx'
import { OrderPicture } from '#web/make/order/order-picture.tsx'
import { RouteList } from '#web/make/order/route-list.tsx'
import { sayJob } from '#web/make/say-job.ts'
import { Link } from '#web/parts/link.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { go } from '#web/router.ts'
import { AskPerson } from '#web/shell/ask-person.tsx'
import { today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'

/** What is to be made, and with each key the ways to it side by side. */
export function OrderScreen({ shop, job }: { readonly shop: ShopSnapshot; readonly job: JobRecord }) {
  const units = useUnits(), known = useJobKnown(shop), day = today(), { form } = job, { shop: settings, machines, stock } = shop
  const planned = useMemo(() => plannedWithOf({ shop: settings, machines, stock }, form.due, day), [settings, machines, stock, form.due, day])
  const answer = useMemo(() => attempt(() => answerRoute(routeCase(form, planned, known), makingBooks)), [form, planned, known])
  const refused = answer instanceof Refusal ? answer : null, at = refused?.facts['field'], field = refused ? orderFieldOf(typeof at === 'string' ? at : '') : null, isEmpty = field !== null && textAt(form, field).trim() === ''
  return (
    <>
      <AskPerson />
      <div className="page mk-order">
        <Link to="/make" className="back">Make</Link>
        <div className="mk-title">
          <h1 className="name-text">{job.name || 'New order'}</h1>
          <button type="button" className="press" onClick={() => { dropJob(job, sayJob(job, units)); go('/make') }}>Drop it</button>
        </div>
        {job.note === '' ? null : <p className="name-text">{job.note}</p>}
        <TextField label="name of the order" value={job.name} maxLength={80} onChange={(name) => nameJob(job.id, name)} />
        <OrderFields id={job.id} form={form} shop={shop} refused={isEmpty ? null : refused} field={field} />
        {refused
          ? <StatusLine danger={!isEmpty}>{isEmpty ? `Still to be said: ${field === 'vises' ? `for how many ${termsFor(units.words).vise}s` : (fieldWords[field] ?? field)}.` : sayRefusal(refused, units)}</StatusLine>
          : null}
        {answer instanceof Refusal ? null : (
          <>
            <OrderPicture order={answer.order} form={form} />
            <ul className="mk-notes">{answer.findings.map((finding, at) => <li key={at}>{sayFinding(finding, units)}</li>)}</ul>
            {machines.length + stock.length === 0 ? <p className="status--danger">Nothing is known yet of what the shop makes bars with. <Link to="/shop">Say in Shop</Link> which machines and stock there are, and what an hour costs.</p> : null}
            <RouteList answer={answer} planned={planned} onChoose={(route) => { chooseRoute(job.id, route, planned); go(`/make/job/${job.id}`) }} />
          </>
        )}
      </div>
    </>
  )
}

function textAt(form: JobRecord['form'], field: string): string {
  const [first, second] = field.split('.'), value: unknown = first === 'offer' && second ? form.offer[second as 'cost'] : form[first as 'heights']
  return typeof value === 'string' ? value : ' '
}

const fieldWords: { readonly [field: string]: string } = {
  heights: 'the heights', from: 'the lowest height', to: 'the highest height', step: 'the step from one to the next', jawHeight: 'the height of the jaw', below: 'how far below the jaw the highest stays', lowest: 'the lowest height', thickness: 'the thickness', length: 'the length',
  jawWidth: 'the width of the jaws', under: 'how much shorter than the jaws', pairs: 'how many pairs',
}
