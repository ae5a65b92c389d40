import type { CheckForm, DraftFields, DraftLook, DraftRecord } from '#model/check-draft.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { newId } from '#web/new-id.ts'
import { shopNow } from '#web/shop-store.ts'
import { writeDeed, writeTyped } from '#web/write.ts'

/** A look nobody has taken yet. */
export const noLook: DraftLook = { wiped: false, stoned: false, rock: 'not tried', feeler: '', seen: [] }

/** The half-done check as it stands at this moment, with every key in it; a gauge may be ahead of what is on the screen. */
function draftNow(id: string): DraftRecord | undefined {
  return shopNow().shop?.drafts.find((draft) => draft.id === id)
}

export function beginDraft(fields: DraftFields): string {
  const record = newId()
  writeDeed({ edits: [{ kind: 'draft', record, fields }] })
  return record
}

/** A reading as typed; an empty one is none. */
export function typeReading(id: string, key: string, text: string): void {
  if (draftNow(id)) writeTyped({ kind: 'draft', record: id, fields: partsOf('typed', { [key]: text }) })
}

export function changeForm(id: string, part: Partial<CheckForm>): void {
  const now = draftNow(id)
  if (now) writeTyped({ kind: 'draft', record: id, fields: { form: { ...now.form, ...part } } })
}

export function changeLook(id: string, bar: string, part: Partial<DraftLook>): void {
  const now = draftNow(id)
  if (now) writeTyped({ kind: 'draft', record: id, fields: partsOf('looks', { [bar]: { ...noLook, ...now.looks[bar], ...part } }) })
}

/** Put aside; it can be taken back as it was, also when the shop's list has let go of it. */
export function dropDraft(id: string, called: string): void {
  writeDeed({ edits: [{ kind: 'draft', record: id, fields: { state: 'dropped' } }] })
  const now = draftNow(id)
  if (now === undefined) return
  const { form, typed, looks, checkId, saw } = now
  offerUndo(`${called}: dropped.`, () => { writeDeed({ edits: [{ kind: 'draft', record: id, saw, fields: { form, typed: {}, looks: {}, ...partsOf('typed', typed), ...partsOf('looks', looks), checkId, state: 'open' } }] }) })
}

/** Each part as a field of its own, so that whoever types into another cell or looks at another bar does not clash. */
function partsOf<Field extends 'typed' | 'looks'>(field: Field, parts: DraftFields[Field]): { readonly [key in `${Field}.${string}`]: DraftFields[Field][string] } {
  return Object.fromEntries(Object.entries(parts).map(([key, part]) => [`${field}.${key}`, part])) as { readonly [key in `${Field}.${string}`]: DraftFields[Field][string] }
}
