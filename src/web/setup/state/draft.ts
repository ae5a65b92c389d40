import type { SetupForm } from '#model/setup-form.ts'
import { isUnitOpen } from '#web/setup/state/at-hand.ts'
import { newState, type SetupState } from '#web/setup/state/setup-state.ts'

const key = 'twinrest-setup-draft'
const version = 1

/** Where the draft lies between two visits: `localStorage`, or anything that keeps texts. */
export type Keep = Pick<Storage, 'getItem' | 'setItem'>

/** The screen as this device left it; a new one where nothing was kept or what was kept is of another version. */
export function draftFrom(keep: Keep, unit: SetupForm['unit']): SetupState {
  const fresh = newState(unit)
  let kept: unknown
  try { kept = JSON.parse(keep.getItem(key) ?? 'null') } catch { return fresh }
  if (!isDraft(kept)) return fresh
  const state = { ...fresh, ...kept.state, typing: null }
  return { ...state, form: isBlank(state.form) ? { ...state.form, unit } : state.form, atHand: isUnitOpen(state.atHand) ? { ...state.atHand, unit } : state.atHand }
}

/** Puts the screen away at each key. A browser that keeps nothing, or no more, loses the draft with the page. */
export function keepDraft(keep: Keep, state: SetupState): void {
  try { keep.setItem(key, JSON.stringify({ version, state })) } catch { /* Said once by the shell: this browser keeps nothing. */ }
}

/**
 * Puts the screen away once the key has been drawn, or as the page is left before that. Not again when it is left later: another page may have put away
 * its own since.
 *
 * @returns to be called when another state follows; what was begun is put away all the same, in order
 */
export function keepDraftSoon(keep: Keep, state: SetupState, page: EventTarget): () => void {
  let isKept = false
  const once = (): void => {
    if (!isKept) keepDraft(keep, state)
    isKept = true
  }
  setTimeout(once)
  page.addEventListener('pagehide', once)
  return () => page.removeEventListener('pagehide', once)
}

/** No length was typed: the form takes on whatever unit is worked in now. */
function isBlank({ height, offTop, between, along, proud, cuts, hollows, wishes, hold }: SetupForm): boolean {
  return [height, offTop, between, along, proud, ...Object.values(wishes), hold?.width ?? '', hold?.drill ?? ''].every((text) => text === '') && cuts.length + hollows.length === 0
}

function isDraft(kept: unknown): kept is { readonly state: SetupState } {
  return typeof kept === 'object' && kept !== null && 'version' in kept && kept.version === version && 'state' in kept
}
