import { emptySetupForm } from '#engine/setup/form.ts'
import type { SetupForm } from '#model/setup-form.ts'
import { type AtHand, nothingAtHand } from '#web/setup/state/at-hand.ts'
import { textAt, withText } from '#web/setup/state/field-path.ts'
import { textRefusal } from '#web/setup/state/readable.ts'

/** What lies open in the drawer under the sheet. */
export type Drawer = { readonly of: 'cut' | 'hollow'; readonly index: number } | { readonly of: 'wishes' | 'vise' } | null

/** Everything a reload has to bring back. The answer is not in it: it follows from these and the shop. */
export type SetupState = {
  /** Null: the last one used. */
  readonly viseId: string | null
  readonly form: SetupForm
  readonly atHand: AtHand
  /** The field the cursor is in, the last text there that could be read, and whether a key was pressed there. */
  readonly typing: { readonly path: string; readonly lastGood: string; readonly begun: boolean } | null
  readonly drawer: Drawer
  /** Key of the choice looked at; null: the first. */
  readonly chosen: string | null
  /** The height asked about with *why not*, as typed. */
  readonly whyNot: string
  readonly title: string
  readonly operation: string
  /** The saved setup and the part this was opened from. */
  readonly setupId: string | null
  readonly partId: string | null
}

export function newState(unit: SetupForm['unit'], viseId: string | null = null): SetupState {
  return { viseId, form: emptySetupForm(unit), atHand: nothingAtHand(unit), typing: null, drawer: null, chosen: null, whyNot: '', title: '', operation: '', setupId: null, partId: null }
}

/**
 * The form the answer is worked out from: as typed, except that a field still being typed in that cannot be read yet
 * (`1 3/`) keeps its last readable text. Once it is left, what stands there counts.
 */
export function formToAsk(state: SetupState): SetupForm {
  const { form, typing } = state
  return typing !== null && isHalfTyped(state) ? withText(form, typing.path, typing.lastGood) : form
}

/** The field being typed in cannot be read yet. */
export function isHalfTyped({ form, typing }: Pick<SetupState, 'form' | 'typing'>): boolean {
  return typing !== null && textRefusal(typing.path, textAt(form, typing.path), form.unit) !== null
}
