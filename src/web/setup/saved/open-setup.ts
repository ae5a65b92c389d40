import type { PartRecord, SetupRecord } from '#model/setup-record.ts'
import type { SetupForm } from '#model/setup-form.ts'
import { choiceKey } from '#web/setup/view/choice-key.ts'
import { newState, type SetupState } from '#web/setup/state/setup-state.ts'

/** The screen as a saved setup left it, looking at the bars that were taken. */
export function openSetup(setup: SetupRecord): SetupState {
  return {
    ...newState(setup.form.unit, setup.viseId), form: setup.form, chosen: setup.bars.length === 0 && setup.stand !== 'bed' ? null : choiceKey(setup),
    title: setup.title, operation: setup.operation, setupId: setup.id, partId: setup.partId,
  }
}

/** The same as a new one: what is kept under it is another setup. */
export function copySetup(setup: SetupRecord): SetupState {
  return { ...openSetup(setup), title: setup.title === '' ? '' : `${setup.title}, copy`.slice(0, 80), setupId: null }
}

/** A part that comes back, in the vise looked at. */
export function openPart(part: PartRecord, viseId: string | null): SetupState {
  return { ...newState(part.form.unit, viseId), form: part.form as SetupForm, title: part.name, partId: part.id }
}
