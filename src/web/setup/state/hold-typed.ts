import type { HoldForm } from '#model/setup-form.ts'
import { type Clamp, noClamp, type Tools } from '#web/setup/state/at-hand.ts'
import type { SetupState } from '#web/setup/state/setup-state.ts'

/** All that is typed under the clamp; an empty text is not given. */
export type HoldTyped = Clamp & Tools & HoldForm
export type HoldField = keyof HoldTyped

const nothingSaid: HoldForm = { group: '', kd: '', yieldMPa: '', width: '', drill: '' }

export function holdTyped({ atHand: { clamps, tools }, form }: Pick<SetupState, 'atHand' | 'form'>, viseId: string): HoldTyped {
  return { ...(clamps[viseId] ?? noClamp), ...tools, ...(form.hold ?? nothingSaid) }
}

/** Each text to where it belongs: this vise, the cutter and drill at hand, or the part. It says nothing of which bars serve: the choice looked at stays. */
export function withHold(state: SetupState, viseId: string, field: HoldField, text: string): SetupState {
  const { atHand, form } = state, clamp = atHand.clamps[viseId] ?? noClamp, { hold = nothingSaid, ...rest } = form
  if (Object.hasOwn(clamp, field)) return { ...state, atHand: { ...atHand, clamps: { ...atHand.clamps, [viseId]: { ...clamp, [field]: text } } } }
  if (Object.hasOwn(atHand.tools, field)) return { ...state, atHand: { ...atHand, tools: { ...atHand.tools, [field]: text } } }
  const said = { ...hold, [field]: text }
  return { ...state, form: Object.values(said).every((one) => one === '') ? rest : { ...rest, hold: said } }
}
