import { attemptOr } from '#model/attempt.ts'
import { readLengthMm } from '#model/length.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { type Desk, useDesk } from '#web/setup/desk.ts'
import { RefusedRow } from '#web/setup/answer/nearest-rows.tsx'
import { RestRow } from '#web/setup/answer/rest-row.tsx'
import { nameOfRest } from '#web/setup/answer/say-choice.ts'
import { pairsNear } from '#web/setup/view/nearest.ts'
import { type Refused, refusedAlone } from '#web/setup/view/view-from.ts'
import { choiceKey } from '#web/setup/view/choice-key.ts'

/** Any height of the rack can be asked why it is not the answer. */
export function WhyNotField() {
  const desk = useDesk(), { state, dispatch, view, bench, units } = desk
  if (!view.answered) return null
  const asked = askedAbout(desk)
  return (
    <section>
      <h2 className="setup-rule">Why not another height?</h2>
      <div className="setup-whynot"><NumberField label="why not" more="this height" ifEmpty="30" value={state.whyNot} onChange={(text) => dispatch({ do: 'type why not', text })} /></div>
      {asked === null ? null : (
        <ul aria-label="Answers to why not">
          {asked.refused.map((refused) => <RefusedRow key={choiceKey(refused.rejection)} refused={refused} />)}
          {asked.serving.map((choice) => <RestRow key={choiceKey(choice)} rest={choice} serves lines={[nameOfRest(choice, bench, units), 'It serves: tap to see it.']} />)}
          {asked.refused.length + asked.serving.length === 0 ? <li className="setup-lines">There is no pair near this height in the rack.</li> : null}
        </ul>
      )}
    </section>
  )
}

type Asked = { readonly refused: readonly Refused[]; readonly serving: NonNullable<Desk['view']['answered']>['answer']['choices'] }

/** The pairs nearest to the height asked about; null while there is no height to read. */
function askedAbout({ state, view: { answered }, bench, units }: Desk): Asked | null {
  const heightMm = attemptOr(() => readLengthMm(state.whyNot, units.length), null)
  if (heightMm === null || !answered) return null
  const way = answered.question.part.shape === 'round' ? 'single' : 'on edge', near = pairsNear(bench.rack, way, heightMm)
  const refused = near.flatMap(({ bars }) => refusedAlone({ bars, stand: way }, answered, bench) ?? [])
  const serving = answered.answer.choices.filter(({ stand, bars }) => stand === way && near.some((one) => one.bars.every((id) => bars.includes(id))))
  return { refused, serving }
}
