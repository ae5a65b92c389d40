import { useMemo, useState } from 'react'
import { outcomesPicture } from '#drafting/setup/outcomes-picture.ts'
import { scatterFrom } from '#engine/setup/prediction/scatter.ts'
import type { Prediction } from '#engine/setup/prediction/prediction.ts'
import { attempt } from '#model/attempt.ts'
import type { OutcomeRecord } from '#model/outcome-record.ts'
import { Refusal } from '#model/refusal.ts'
import type { Choice } from '#model/setup.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { wordingFor } from '#words/wording.ts'
import { newId, nowIso } from '#web/new-id.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { foretoldFrom, outcomeFrom } from '#web/setup/predict/outcome-of.ts'
import { isKept, keepSetup } from '#web/setup/saved/use-pair.ts'
import { writeDeed } from '#web/write.ts'

const nothing = { across: '', along: '' }

/** After the cut: what was measured, kept beside what was foretold, and how well that has held so far. */
export function AfterTheCut({ choice, prediction }: { readonly choice: Choice; readonly prediction: Prediction | null }) {
  const { shop, state, bench, units, terms, dispatch } = useDesk()
  const [typed, setTyped] = useState(nothing), [refusal, setRefusal] = useState<Refusal | null>(null)
  const note = () => {
    const kept = shop.setups.find(({ id }) => id === state.setupId)
    const asked = { state, viseId: bench.vise.id, choice, atIso: nowIso(), newId }
    const { setupId, edits } = kept !== undefined && isKept(kept, asked) ? { setupId: kept.id, edits: [] } : keepSetup(shop, asked)
    const record = newId(), fields = attempt(() => outcomeFrom(setupId, typed, prediction, units.length))
    setRefusal(fields instanceof Refusal ? fields : null)
    if (fields instanceof Refusal) return
    writeDeed({ edits: [...edits, { kind: 'outcome', record, fields }] })
    dispatch({ do: 'saved', setupId })
    setTyped(nothing)
    offerUndo(fields.foretold === null ? 'Noted without a prediction.' : 'Noted beside the prediction.', () => writeDeed({ edits: [{ kind: 'outcome', record, fields: { retired: true } }] }))
  }
  const said = (field: 'partAcross' | 'partAlong') => (refusal?.facts['field'] === field ? sayRefusal(refusal, units) : null)
  return (
    <details className="comes-out-more">
      <summary>After the cut: note what came out</summary>
      <p className="setup-lines">Thickness in {units.length}: across, how much more at the {terms.movingJaw} than at the fixed one; along, at the right end than at the left. Less is a minus.</p>
      <form className="comes-out-typed" onSubmit={(event) => { event.preventDefault(); note() }}>
        <NumberField label="across" value={typed.across} error={said('partAcross')} onChange={(across) => setTyped({ ...typed, across })} />
        <NumberField label="along" value={typed.along} error={said('partAlong')} onChange={(along) => setTyped({ ...typed, along })} />
        <button type="submit" className="action" disabled={typed.across.trim() === '' && typed.along.trim() === ''}>Note it</button>
      </form>
      {foretoldFrom(prediction) === null ? <p className="setup-lines setup-open">Kept without a prediction: say which side is at the fixed jaw, and one is kept with it.</p> : null}
      <Held outcomes={shop.outcomes} />
    </details>
  )
}

/** How well predictions across have held, as a drawing and in a sentence; latest outcomes last. */
function Held({ outcomes }: { readonly outcomes: readonly OutcomeRecord[] }) {
  const { units } = useDesk(), w = wordingFor(units)
  const marks = useMemo(() => marksOf(outcomes), [outcomes])
  if (marks.length === 0) return null
  const within = marks.filter(({ apartUm, withinUm }) => Math.abs(apartUm) <= withinUm).length, { across: { sdUm, count } } = scatterFrom(outcomes)
  const scatter = sdUm === null ? '' : ` The shop’s own scatter, from ${count} parts: ${w.micrometres(sdUm)}.`
  const says = `${within} of the last ${marks.length} came out within what was foretold across.${scatter}`
  const words = { thicker: 'thicker than foretold', thinner: 'thinner', scale: w.micrometres }
  const scene = outcomesPicture({ title: 'How predictions have held', description: says, marks, words }, { widthMm: 96 })
  return (
    <section aria-label="How predictions have held">
      <Drawing scene={scene} />
      <p className="setup-lines">{says}</p>
      <ul className="setup-lines">{marks.map(({ measuredUm, foretoldUm }, at) => <li key={at}>Measured {w.micrometres(measuredUm)} across, foretold {w.micrometres(foretoldUm)}.</li>)}</ul>
    </section>
  )
}

const mostMarks = 12

/** Of the latest outcomes what came out across, beside what was foretold with two standard deviations. */
function marksOf(outcomes: readonly OutcomeRecord[]) {
  return outcomes.flatMap(({ retired, foretold, measuredUm: { across: measuredUm } }) => {
    if (retired || foretold === null || measuredUm === null) return []
    const { meanUm: foretoldUm, sdUm } = foretold.across
    return [{ measuredUm, foretoldUm, apartUm: measuredUm - foretoldUm, withinUm: 2 * sdUm }]
  }).slice(-mostMarks)
}
