import { useEffect, useRef } from 'react'
import type { JobView } from '#engine/make/job/job-view.ts'
import type { JobRecord } from '#model/job-record.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { routeWords, sayHours } from '#words/say-make.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital } from '#words/wording.ts'
import { useJobKnown, useJobView } from '#web/make/facts.ts'
import { dropJob, nameJob, reopenOrder } from '#web/make/job-edits.ts'
import { jobNamer } from '#web/make/job/job-namer.ts'
import { StepCard } from '#web/make/job/step-card.tsx'
import { StepStrip } from '#web/make/job/step-strip.tsx'
import { sayJob, sayOrder } from '#web/make/say-job.ts'
import { Link } from '#web/parts/link.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { go } from '#web/router.ts'
import { AskPerson } from '#web/shell/ask-person.tsx'
import { useUnits } from '#web/units.ts'

type Props = { readonly shop: ShopSnapshot; readonly job: JobRecord; readonly step: string | undefined }

/** A job as a strip of step cards from the stock to the rack, one of them open. */
export function JobScreen({ shop, job, step }: Props) {
  const units = useUnits(), known = useJobKnown(shop), view = useJobView(job, shop, known)
  return (
    <>
      <AskPerson />
      <div className="page mk-job">
        <Link to="/make" className="back">Make</Link>
        <div className="mk-title">
          <h1 className="name-text">{sayJob(job, units)}</h1>
          <div className="mk-prints">
            <Link to={`/make/job/${job.id}/sheet`} className="press">Route sheet</Link>
            {job.route === 'regrind' ? null : <><Link to={`/make/job/${job.id}/cuts`} className="press">Cut list</Link><Link to={`/make/job/${job.id}/buying`} className="press">Buying list</Link></>}
          </div>
        </div>
        <p>{capital(routeWords[job.route!])} · {sayOrder(job, units)}{view instanceof Refusal ? '' : ` · ${sayHours(view.plan.hours.taken, units)} taken, ${sayHours(view.plan.hours.left, units)} left of ${sayHours(view.plan.hours.planned, units)}`}</p>
        {job.note === '' ? null : <p className="name-text">{job.note}</p>}
        {view instanceof Refusal ? <StatusLine danger>{sayRefusal(view, units)}</StatusLine> : <Steps shop={shop} job={job} view={view} step={step} />}
        <section aria-label="The order itself" className="mk-about">
          <TextField label="name of the job" value={job.name} maxLength={80} onChange={(name) => nameJob(job.id, name)} />
          <div className="actions">
            {job.bars.length === 0 ? <button type="button" className="action" onClick={() => { reopenOrder(job.id); go(`/make/order/${job.id}`) }}>Change the order or the way</button> : null}
            <button type="button" className="action" onClick={() => { dropJob(job, sayJob(job, units)); go('/make') }}>Drop the job</button>
          </div>
        </section>
      </div>
    </>
  )
}

function Steps({ shop, job, view, step }: Props & { readonly view: JobView }) {
  const units = useUnits(), { plan } = view, nameOf = jobNamer(job, shop)
  const chosen = plan.steps.findIndex((one, at) => (step === undefined ? one.kind === plan.next : String(at + 1) === step)), at = chosen < 0 ? plan.steps.length - 1 : chosen, open = plan.steps[at]!
  const card = useRef<HTMLDivElement>(null), before = useRef(step)
  useEffect(() => { if (before.current !== step) card.current?.focus({ preventScroll: false }); before.current = step }, [step])
  return (
    <>
      <StepStrip job={job} view={view} open={at} />
      {plan.findings.length > 0 ? <ul className="mk-notes mk-findings" aria-label="To know before going on">{plan.findings.map((finding, key) => <li key={key}>{sayFinding(finding, units, nameOf)}</li>)}</ul> : null}
      <div ref={card} tabIndex={-1} className="mk-card-room"><StepCard key={open.kind} shop={shop} job={job} view={view} step={open} number={at + 1} /></div>
      <ShowSum sums={plan.sum} title="Show the sums of the plan" />
    </>
  )
}
