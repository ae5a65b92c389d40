import { useMemo, useState } from 'react'
import { outcomesPicture } from '#drafting/setup/outcomes-picture.ts'
import { scatterFrom } from '#engine/setup/prediction/scatter.ts'
import type { Prediction } from '#engine/setup/prediction/prediction.ts'
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
import { keepSetup, sameQuestion } from '#web/setup/saved/use-pair.ts'
import { writeDeed } from '#web/write.ts'

const nothing = { across: '', along: '' }

/** After the cut: what was measured, kept beside what was foretold, and how well that has held so far. */
export function AfterTheCut({ choice, prediction }: { readonly choice: Choice; readonly prediction: Prediction | null }) {
  const { shop, state, bench, units, terms, dispatch } = useDesk(), [typed, setTyped] = useState(nothing), [refusal, setRefusal] = useState<Refusal | null>(null)
  const note = () => {
    const asked = { state, viseId: bench.vise.id, choice, atIso: nowIso(), newId }, kept = shop.setups.find(({ id }) => id === state.setupId)
    const same = kept !== undefined && sameQuestion(kept, state, bench.vise.id) && kept.bars.join() === choice.bars.join(), decision = same ? { setupId: kept.id, edits: [] } : keepSetup(shop, asked)
    try {
      const record = newId(), fields = outcomeFrom(decision.setupId, typed, prediction, units.length)
      writeDeed({ edits: [...decision.edits, { kind: 'outcome', record, fields }] })
      dispatch({ do: 'saved', setupId: decision.setupId })
      setTyped(nothing)
      setRefusal(null)
      offerUndo(fields.foretold === null ? 'Noted without a prediction.' : 'Noted beside the prediction.', () => writeDeed({ edits: [{ kind: 'outcome', record, fields: { retired: true } }] }))
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      setRefusal(error)
    }
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
  const marks = useMemo(() => outcomes.filter(({ retired }) => !retired).flatMap(({ foretold, measuredUm: { across } }) => (foretold === null || across === null ? [] : [{ measuredUm: across, foretoldUm: foretold.across.meanUm, apartUm: across - foretold.across.meanUm, withinUm: 2 * foretold.across.sdUm }])).slice(-12), [outcomes])
  if (marks.length === 0) return null
  const within = marks.filter(({ apartUm, withinUm }) => Math.abs(apartUm) <= withinUm).length, { across: { sdUm, count } } = scatterFrom(outcomes)
  const says = `${within} of the last ${marks.length} came out within what was foretold across.${sdUm === null ? '' : ` The shop’s own scatter, from ${count} parts: ${w.micrometres(sdUm)}.`}`
  const scene = outcomesPicture({ title: 'How predictions have held', description: says, marks, words: { thicker: 'thicker than foretold', thinner: 'thinner', scale: (um) => w.micrometres(um) } }, { widthMm: 96 })
  return (
    <section aria-label="How predictions have held">
      <Drawing scene={scene} />
      <p className="setup-lines">{says}</p>
      <ul className="setup-lines">{marks.map(({ measuredUm, foretoldUm }, at) => <li key={at}>Measured {w.micrometres(measuredUm)} across, foretold {w.micrometres(foretoldUm)}.</li>)}</ul>
    </section>
  )
}
