import type { StepProps } from '#web/make/job/step-card.tsx'
import { barsDeed } from '#web/make/job/bars-deed.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { writeDeed } from '#web/write.ts'

/** Where something is read of bars that have no identity yet: they get it once they are cut (or come, where they are bought). */
export function NameBars({ job, view, step }: StepProps) {
  if (job.bars.length > 0 || step.kind === 'order' || (step.kind === 'check the delivery' && job.route !== 'bought')) return null
  const name = () => {
    const { made, edits, ...rest } = barsDeed(job, view)
    writeDeed({ ...rest, edits: [...edits, { kind: 'job', record: job.id, fields: { bars: made } }] })
    offerUndo(`${made.length} bars are in the rack, in work.`, () => { writeDeed({ edits: [{ kind: 'job', record: job.id, fields: { bars: [] } }], events: made.map(({ id }) => ({ bar: id, kind: 'gone' as const, undoes: null, note: '' })) }) })
  }
  return (
    <section className="boxed">
      <p>{view.order.bars} bars have no names yet. Once they are cut, each gets a name and a code to mark on its end, and stands in the rack as “in work” until a check at the plate has proved it.</p>
      <div className="actions"><button type="button" className="action" onClick={name}>They are there: name them</button></div>
    </section>
  )
}
