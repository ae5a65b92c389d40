import type { BarEvent, BarEventKind } from '#model/bar-event.ts'
import type { JobFields } from '#model/job-record.ts'
import type { StepKind } from '#model/make-step.ts'
import { standingEvents } from '#engine/rack/trust-from.ts'

/** What a step of a regrind, once it is done, has done to every bar. */
const eventsAt: { readonly [step in StepKind]?: readonly BarEventKind[] } = {
  'clean and demagnetise': ['demagnetised'], 'stone burrs': ['stoned'], 'grind the first face': ['reground', 'on the chuck'], 'grind the second face': ['reground', 'on the chuck'],
  'demagnetise and cool': ['demagnetised'], 'mark anew': ['marked anew'],
}

type Job = Pick<JobFields, 'route' | 'bars'>

/** To be written when the step is ticked; nothing for new bars, which are in work until the plate has proved them. */
export function eventsOfStep({ route, bars }: Job, step: StepKind): readonly Pick<BarEvent, 'bar' | 'kind' | 'undoes' | 'note'>[] {
  return route === 'regrind' ? (eventsAt[step] ?? []).flatMap((kind) => bars.map(({ id }) => ({ bar: id, kind, undoes: null, note: '' }))) : []
}

/** To be written when the tick is taken back: the first of its kind since the tick, as far as nobody took it back before. `events`: of all bars. */
export function undoingOfStep(job: Job, step: StepKind, tickIso: string, events: readonly BarEvent[]): readonly Pick<BarEvent, 'bar' | 'kind' | 'undoes' | 'note'>[] {
  return eventsOfStep(job, step).flatMap(({ bar, kind }) => {
    const written = standingEvents(events.filter((one) => one.bar === bar)).find((one) => one.kind === kind && one.atIso >= tickIso)
    return written === undefined ? [] : [{ bar, kind: 'undone', undoes: written.id, note: '' }]
  })
}
