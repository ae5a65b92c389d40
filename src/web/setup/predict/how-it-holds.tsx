import { useState } from 'react'
import { answerHold, type HoldAnswer } from '#engine/setup/hold/answer-hold.ts'
import { drillPlaceOf } from '#engine/setup/hold/drill-place.ts'
import { specificForces } from '#reference/cutting/specific-forces.ts'
import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'
import type { Choice } from '#model/setup.ts'
import { limitText } from '#words/findings/seat.ts'
import { saySetupFinding } from '#words/say-setup-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { capital, wordingFor } from '#words/wording.ts'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { holdCase, holdFieldOf, type HoldNumber, holdTextRefusal, type HoldUnits, stillToGive } from '#web/setup/predict/hold-case.ts'
import { HoldFields } from '#web/setup/predict/hold-fields.tsx'
import { type HoldField, holdTyped } from '#web/setup/state/hold-typed.ts'

const groups = specificForces.flatMap(({ group, what, kc11MPa, mc }) => (mc === null ? [] : [{ group, what, kc11MPa, mc }]))

/** What the clamp is worth against the deepest cut and the largest drill: each limit as a ratio, and what was not looked at. */
export function HowItHolds({ choice }: { readonly choice: Choice }) {
  const { view: { answered }, bench: { vise, jaws, bars }, state, dispatch, units } = useDesk()
  const typed = holdTyped(state, vise.id), typedIn: HoldUnits = { form: state.form.unit, atHand: state.atHand.unit }
  const [typing, setTyping] = useState<{ readonly field: HoldNumber; readonly lastGood: string } | null>(null)
  const refused = (field: HoldNumber, text: string) => holdTextRefusal(field, text, typedIn)
  const enter = (field: HoldNumber | null) => setTyping(field && { field, lastGood: refused(field, typed[field]) === null ? typed[field] : '' })
  const take = (field: HoldField, text: string) => {
    if (field === typing?.field && refused(typing.field, text) === null) setTyping({ ...typing, lastGood: text })
    dispatch({ do: 'type hold', viseId: vise.id, field, text })
  }
  const question = answered!.question, drilled = drillPlaceOf(question, choice, bars), force = groups.find(({ group }) => group === typed.group) ?? null
  const asked = { question, choice, drilled, jaws, side: state.form.side ?? 'unknown', force, units: typedIn }
  const settled = typing !== null && refused(typing.field, typed[typing.field]) !== null ? { ...typed, [typing.field]: typing.lastGood } : typed
  const got = attempt(() => answerTo(holdCase(settled, asked))), [answer, refusal] = got instanceof Refusal ? [null, got] : [got, null]
  const wrong = (field: HoldNumber) => (typing?.field === field ? null : refused(field, typed[field])) ?? (refusal !== null && holdFieldOf(refusal) === field ? refusal : null)
  return (
    <>
      <HoldFields typed={typed} units={typedIn} lacks={stillToGive(typed, asked)} groups={groups} drilled={drilled} wrong={wrong} take={take} enter={enter} />
      {refusal === null ? null : <p className="setup-refusal">{sayRefusal(refusal, units)}</p>}
      {answer === null ? null : <Worth answer={answer} />}
      <p className="setup-lines setup-open">
        The depth is that of the deepest cut over a jaw; the drill the largest of the setup unless another is typed,
        where its holes have least under them: outside the bars, else midway between them. Taps and reamers are not computed.
        Taken where nothing else is given: three times the force for milling, twice for drilling (common practice, no source);
        friction 0.07 for smooth jaws with coolant, else by jaw face and surface (a clamping handbook);
        a plain screw passes on a fifth of the torque (common practice, no source).
      </p>
    </>
  )
}

function Worth({ answer: { limits, least, findings, sum } }: { readonly answer: HoldAnswer }) {
  const { units } = useDesk(), w = wordingFor(units), times = (ratio: number) => (ratio >= 100 ? 'over 100 times' : `${w.number(Math.floor(100 * ratio) / 100)} times`)
  return (
    <>
      {least === null ? null : <p className="comes-out-said">{times(least.ratio)} what was asked for</p>}
      <dl className="comes-out-limits" aria-label="There is of what was asked for">
        {limits.map(({ limit, ratio }) => <div key={limit} data-short={ratio < 1 ? '' : undefined}><dt>{capital(limitText(limit))}</dt><dd>{ratio < 1 ? 'short: ' : ''}{times(ratio)}</dd></div>)}
      </dl>
      <ul className="setup-points">{findings.map((finding) => <li key={JSON.stringify(finding)}>{saySetupFinding(finding, units)}</li>)}</ul>
      <ShowSum sums={sum} />
    </>
  )
}

const answerTo = (raw: object | null): HoldAnswer | null => raw && answerHold(raw)
