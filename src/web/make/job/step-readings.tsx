import { useState } from 'react'
import { readingKey } from '#engine/make/job/actuals-from.ts'
import { wordLength } from '#model/length.ts'
import type { ActualField } from '#model/make-plan.ts'
import { sayLimit, sayReading } from '#words/say-make.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital } from '#words/wording.ts'
import type { StepProps } from '#web/make/job/step-card.tsx'
import { jobNamer } from '#web/make/job/job-namer.ts'
import { typeReading } from '#web/make/job-edits.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { useUnits } from '#web/units.ts'

/** What to read after the step, bar by bar, with its limits; of many heights one at a time. */
export function StepReadings({ shop, job, view, step }: StepProps) {
  const units = useUnits(), { made } = view.plan, heights = [...new Set(made.map(({ heightMm }) => heightMm))], [chosen, setChosen] = useState(heights[0]!), nameOf = jobNamer(job, shop)
  if (step.reads.length === 0) return null
  if (job.bars.length === 0) {
    return (
      <section aria-label="To read"><h3>To read</h3><ul className="mk-notes">{step.reads.map((asked) => <li key={asked.what}>{capital(sayReading(asked.what, units))}{asked.places > 1 ? `, at ${asked.places} places` : ''}</li>)}</ul></section>
    )
  }
  const idsOf = (mm: number) => made.filter(({ heightMm }) => heightMm === mm).map(({ id }) => id)
  return (
    <section aria-label="Readings" className="mk-readings">
      <h3>Read</h3>
      {heights.length > 1 ? <SelectField label="height" value={String(chosen)} onChange={(text) => setChosen(Number(text))} options={heights.map((mm) => ({ value: String(mm), label: `${wordLength(mm, units)}${sayCount(step.fields, idsOf(mm))}` }))} /> : null}
      {idsOf(chosen).map((id) => (
        <fieldset key={id} className="mk-bar">
          <legend>{nameOf(id)}</legend>
          {step.fields.filter(({ bar }) => bar === id).map((field) => <Field key={field.what} job={job} view={view} step={step} field={field} bar={nameOf(id)} />)}
        </fieldset>
      ))}
    </section>
  )
}

function Field({ job, view, step, field, bar }: Omit<StepProps, 'shop'> & { readonly field: ActualField; readonly bar: string }) {
  const units = useUnits(), { what, places, isInside } = field, limit = sayLimit(field, units)
  return (
    <div className="mk-reading" data-outside={isInside === false ? '' : undefined}>
      <p>{capital(sayReading(what, units))}{limit === '' ? '' : <span className="small"> {limit}</span>}{isInside === null ? null : <strong> {isInside ? '✓' : '! outside'}</strong>}</p>
      <div className="mk-places">
        {Array.from({ length: places }, (_, place) => {
          const key = readingKey(step.kind, field.bar, what, place), refused = view.refused[key]
          return <NumberField key={place} label={places === 1 ? 'read' : `place ${place + 1}`} more={`of ${bar}, ${what}`} value={job.typed[key] ?? ''} onChange={(text) => typeReading(job.id, key, text)} error={refused ? sayRefusal(refused, units) : null} />
        })}
      </div>
    </div>
  )
}

/** How far the readings of one height are. */
function sayCount(fields: readonly ActualField[], ids: readonly string[]): string {
  const own = fields.filter(({ bar }) => ids.includes(bar)), read = own.filter(({ values }) => values !== null).length
  return read === 0 ? '' : read === own.length ? ', all read' : `, ${read} of ${own.length} read`
}
