import { useCallback, useState } from 'react'
import type { JobView } from '#engine/make/job/job-view.ts'
import type { CutsFound } from '#engine/make/job/leftovers-of-job.ts'
import type { JobRecord } from '#model/job-record.ts'
import { wordLength } from '#model/length.ts'
import type { PlannedStep } from '#model/make-plan.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { cautionsFor } from '#words/cautions.ts'
import { sayFinding } from '#words/say-finding.ts'
import { machineWords, sayHours, sayMoney, saySize, sayStep } from '#words/say-make.ts'
import { CutCard } from '#web/make/job/cards/cut-card.tsx'
import { CuttingCard } from '#web/make/job/cards/cutting-card.tsx'
import { GrindCard } from '#web/make/job/cards/grind-card.tsx'
import { HeatCard } from '#web/make/job/cards/heat-card.tsx'
import { StraightenCard } from '#web/make/job/cards/straighten-card.tsx'
import { HandOver, ReadAnew } from '#web/make/job/hand-over.tsx'
import { jobNamer } from '#web/make/job/job-namer.ts'
import { NameBars } from '#web/make/job/name-bars.tsx'
import { StepDrawing } from '#web/make/job/step-drawing.tsx'
import { StepReadings } from '#web/make/job/step-readings.tsx'
import { TickStep } from '#web/make/job/tick-step.tsx'
import { useUnits } from '#web/units.ts'

export type StepProps = { readonly shop: ShopSnapshot; readonly job: JobRecord; readonly view: JobView; readonly step: PlannedStep }

const sizesShown = 4

/** One step: its drawing, what to do, what is computed for it, what to read, what to be warned of, and the tick. */
export function StepCard({ number, ...props }: StepProps & { readonly number: number }) {
  const units = useUnits(), { shop, job, step, view } = props, nameOf = jobNamer(job, shop), [found, setFound] = useState<CutsFound>({})
  const onFound = useCallback((cut: string, answer: CutsFound[string]) => setFound((before) => (before[cut] === answer ? before : { ...before, [cut]: answer! })), [])
  return (
    <article className="mk-card" aria-labelledby="mk-step">
      <header className="mk-card-head">
        <StepDrawing view={view} step={step} />
        <div>
          <h2 id="mk-step">{number} {sayStep(step.kind)}</h2>
          <p className="small">{sayWork(step, units)}</p>
          <ul className="mk-notes">{step.content.map((one, at) => <li key={at}>{sayFinding(one, units, nameOf)}</li>)}</ul>
        </div>
      </header>
      <Sizes step={step} />
      {step.calcs.includes('cut-bars') || step.calcs.includes('cut-plate') ? <CutCard {...props} onFound={onFound} /> : null}
      {step.calcs.includes('cutting') ? <CuttingCard {...props} /> : null}
      {step.calcs.includes('heat') ? <HeatCard {...props} /> : null}
      {step.calcs.includes('straighten') ? <StraightenCard {...props} /> : null}
      {step.calcs.includes('grind') ? <GrindCard {...props} /> : null}
      <NameBars {...props} />
      {step.kind === 'read before grinding' ? <ReadAnew {...props} /> : null}
      {step.kind === 'inspect' ? <HandOver {...props} /> : <StepReadings {...props} />}
      {step.cautions.length > 0 ? <section aria-label="Cautions" className="mk-cautions"><ul className="mk-notes">{cautionsFor(new Set(step.cautions), units).map((text) => <li key={text}>{text}</li>)}</ul></section> : null}
      <TickStep {...props} found={found} />
    </article>
  )
}

/** `at the saw · 0.5 h, the machine 2 h · 12.50`. */
function sayWork({ outside, machine, hours, machineHours, cost }: PlannedStep, units: Units): string {
  const where = outside ? 'done outside' : machine === null ? 'at the bench' : `at the ${machineWords[machine]}`
  const time = machineHours > hours ? `${sayHours(hours, units)}, the machine ${sayHours(machineHours, units)}` : sayHours(hours, units)
  return [where, time, ...(cost === null ? [] : [sayMoney(cost, units)])].join(' · ')
}

/** Sizes after the step, tallest last; a long ladder is folded. */
function Sizes({ step: { sizes } }: Pick<StepProps, 'step'>) {
  const units = useUnits(), [all, setAll] = useState(false), shown = all ? sizes : sizes.slice(0, sizesShown)
  if (sizes.length === 0) return null
  return (
    <div className="mk-sizes">
      <table>
        <caption>Sizes after this step, height × thickness × length</caption>
        <tbody>{shown.map(({ heightMm, size }) => <tr key={heightMm}><th scope="row">for {wordLength(heightMm, units)}</th><td>{saySize(size, units)}</td></tr>)}</tbody>
      </table>
      {sizes.length > sizesShown ? <button type="button" className="press" aria-expanded={all} onClick={() => setAll(!all)}>{all ? 'Fewer' : `All ${sizes.length} heights`}</button> : null}
    </div>
  )
}
