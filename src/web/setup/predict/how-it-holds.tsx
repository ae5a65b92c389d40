import { useState } from 'react'
import { answerHold, type HoldAnswer } from '#engine/setup/hold/answer-hold.ts'
import { specificForces } from '#reference/cutting/specific-forces.ts'
import { Refusal } from '#model/refusal.ts'
import type { Choice } from '#model/setup.ts'
import { saySetupFinding } from '#words/say-setup-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { wordingFor } from '#words/wording.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { holdCase, type HoldTyped, noHold } from '#web/setup/predict/hold-case.ts'

const groups = specificForces.flatMap(({ group, kc11MPa, mc }) => (mc === null ? [] : [{ group, kc11MPa, mc }]))

/** What the clamp is worth against the deepest cut, folded away: a ratio and the limit it is of, and what was not looked at. */
export function HowItHolds({ choice }: { readonly choice: Choice }) {
  const { view: { answered }, bench: { jaws }, state: { form }, units } = useDesk(), [typed, setTyped] = useState(noHold), w = wordingFor(units)
  const asked = () => holdCase(typed, { question: answered!.question, choice, jaws, side: form.side ?? 'unknown', forceOf: (group) => groups.find((one) => one.group === group)!, unit: units.length })
  const [answer, refusal] = answeredOr(asked)
  const field = (name: keyof HoldTyped, label: string, ifEmpty?: string) => <NumberField label={label} value={typed[name]} {...(ifEmpty === undefined ? {} : { ifEmpty })} onChange={(text) => setTyped({ ...typed, [name]: text })} />
  return (
    <details className="comes-out-more">
      <summary>What the clamp is worth</summary>
      <div className="comes-out-typed">
        {field('torqueNm', 'N m at the handle')}{field('lead', `lead of the screw, ${units.length}`)}{field('forceN', 'or N, measured')}
        {field('diameter', `cutter ⌀, ${units.length}`)}{field('teeth', 'teeth')}{field('feed', `feed a tooth, ${units.length}`)}{field('width', `width of cut, ${units.length}`)}{field('helix', 'helix, degrees', '0')}
        <SelectField label="steel, group of VDI 3323" value={typed.group} options={groups.map(({ group, kc11MPa }) => ({ value: group, label: `${group}: ${kc11MPa} N/mm²` }))} onChange={(group) => setTyped({ ...typed, group })} />
      </div>
      <p className="setup-lines setup-open">
        The depth is that of the deepest cut over a jaw. Taken where nothing else is given: three times the force for milling (common practice, no source); friction 0.07 for smooth jaws with coolant, else by jaw face and surface (a clamping
        handbook); a plain screw passes on a fifth of the torque (common practice, no source).
      </p>
      {refusal === null ? null : <p className="setup-refusal">{sayRefusal(refusal, units)}</p>}
      {answer === null ? null : (
        <>
          {answer.least === null ? null : <p className="comes-out-said">{w.number(Math.floor(100 * answer.least.ratio) / 100)} times what was asked for</p>}
          <ul className="setup-points">{answer.findings.map((finding) => <li key={JSON.stringify(finding)}>{saySetupFinding(finding, units)}</li>)}</ul>
          <ShowSum sums={answer.sum} />
        </>
      )}
    </details>
  )
}

function answeredOr(asked: () => object | null): readonly [HoldAnswer | null, Refusal | null] {
  try {
    const raw = asked()
    return [raw === null ? null : answerHold(raw), null]
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return [null, error]
  }
}
