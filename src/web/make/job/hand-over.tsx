import type { DraftRecord } from '#model/check-draft.ts'
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
  const { draft, begin } = useCheck({ shop, job }), ids = job.bars.map(({ id }) => id)
  const heights = step.fields.filter(({ what }) => what === 'height'), read = heights.filter(({ values }) => values !== null).length
  if (ids.length === 0) return null
  return (
    <section className="boxed" aria-label="Proof">
      <p>{read === 0 ? `None of the bars was at the plate yet. They stay “${job.route === 'regrind' ? 'look first' : 'in work'}” until a check has proved them.` : `${read} of ${heights.length} bars were read at the plate.`}</p>
      {view.plan.experience ? <p>{sayLearned(view.plan.experience)}</p> : null}
      <div className="actions">{draft ? <Link to={draftPath(draft)} className="action main">Go on with the check</Link> : <button type="button" className={read < heights.length ? 'action main' : 'action'} onClick={begin}>{read === 0 ? 'Hand them to Inspect' : 'Check them again'}</button>}</div>
    </section>
  )
}

/** Worn bars are read once more before they are ground, where they were stoned since the last check. */
export function ReadAnew({ shop, job }: StepProps) {
  const { draft, begin } = useCheck({ shop, job })
  return (
    <section className="boxed" aria-label="Profile">
      <div className="actions">{draft ? <Link to={draftPath(draft)} className="action">Go on with the check</Link> : <button type="button" className="action" onClick={begin}>Read them anew at the plate</button>}</div>
    </section>
  )
}

/** The half-done check of a job, and how one is begun. */
function useCheck({ shop, job }: Pick<StepProps, 'shop' | 'job'>): { readonly draft: DraftRecord | undefined; readonly begin: () => void } {
  const units = useUnits(), draft = shop.drafts.find(({ id, state }) => id === job.draftId && state === 'open'), ids = job.bars.map(({ id }) => id)
  const begin = () => {
    const record = newId(), bars = ids.slice(0, mostAtOnce).map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' }))
    const fields = newDraft(newForm('compare', units.length, shop, { bars, stations: stationsFor(ids, shop) ?? 5, lines: 2 }))
    writeDeed({ edits: [{ kind: 'draft', record, fields }, { kind: 'job', record: job.id, fields: { draftId: record } }] })
    go(`/inspect/check/${record}`)
  }
  return { draft, begin }
}

function sayLearned({ matchUm, parallelUm }: NonNullable<StepProps['view']['plan']['experience']>): string {
  const ends = (um: readonly number[]) => (um.length === 0 ? 'not read' : `${Math.min(...um)} to ${Math.max(...um)} µm`)
  return `The shop learned from it: mates ${ends(matchUm)}, parallel ${ends(parallelUm)}.`
}
