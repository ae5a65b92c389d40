import { newDraft, newForm, stationsFor } from '#web/inspect/draft/new-draft.ts'
import { draftPath } from '#web/inspect/draft/draft-path.ts'
import type { StepProps } from '#web/make/job/step-card.tsx'
import { newId } from '#web/new-id.ts'
import { Link } from '#web/parts/link.tsx'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

/** The most bars that one visit to the plate takes at once. */
const mostAtOnce = 500

/** The finished bars go to Inspect as a half-done check; what it says comes back here by itself. */
export function HandOver({ shop, job, view, step }: StepProps) {
  const units = useUnits(), draft = shop.drafts.find(({ id, state }) => id === job.draftId && state === 'open'), ids = job.bars.map(({ id }) => id)
  const heights = step.fields.filter(({ what }) => what === 'height'), read = heights.filter(({ values }) => values !== null).length
  const begin = () => {
    const record = newId(), bars = ids.slice(0, mostAtOnce).map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' }))
    const fields = newDraft(newForm('compare', units.length, shop, { bars, stations: stationsFor(ids, shop) ?? 5, lines: 2 }))
    writeDeed({ edits: [{ kind: 'draft', record, fields }, { kind: 'job', record: job.id, fields: { draftId: record } }] })
    go(`/inspect/check/${record}`)
  }
  if (ids.length === 0) return null
  return (
    <section className="boxed" aria-label="Proof">
      <p>{read === 0 ? 'None of the bars was at the plate yet. They stay “in work” until a check has proved them.' : `${read} of ${heights.length} bars were read at the plate.`}</p>
      {view.plan.experience ? <p>{sayLearned(view.plan.experience)}</p> : null}
      <div className="actions">{draft ? <Link to={draftPath(draft)} className="action main">Go on with the check</Link> : <button type="button" className={read < heights.length ? 'action main' : 'action'} onClick={begin}>{read === 0 ? 'Hand them to Inspect' : 'Check them again'}</button>}</div>
    </section>
  )
}

function sayLearned({ matchUm, parallelUm }: NonNullable<StepProps['view']['plan']['experience']>): string {
  const ends = (um: readonly number[]) => (um.length === 0 ? 'not read' : `${Math.min(...um)} to ${Math.max(...um)} µm`)
  return `The shop learned from it: mates ${ends(matchUm)}, parallel ${ends(parallelUm)}.`
}
