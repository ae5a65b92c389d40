import type { SetupForm } from '#model/setup-form.ts'
import { addUnserved } from '#store/unserved.ts'
import type { Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'
import { chooseFromForm } from '#tasks/setup/choose-for-vise.ts'

/**
 * Remembers that nothing in the rack served a form at a vise, once a day, if it is so by the shop's own facts.
 *
 * @returns whether it was remembered now
 * @throws Refusal as `chooseFromForm`
 */
export async function markUnserved(store: Store, { viseId, form }: { readonly viseId: string; readonly form: SetupForm }, by: Maker): Promise<boolean> {
  const { answer } = await chooseFromForm(store, { viseId, form, most: 1, rejectedMost: 0 })
  if (answer.choices.length > 0) return false
  const { person, device, atIso } = by
  return addUnserved(store, { id: by.newId(), viseId, form, lowMm: answer.window.lowMm, highMm: answer.window.highMm, person, device, atIso })
}
