import type { RecordKind } from '#model/change.ts'
import type { FieldsOf } from '#model/record-fields.ts'
import { capital } from '#words/wording.ts'
import { newId } from '#web/new-id.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { changedKeys } from '#web/shop/changed-keys.ts'
import { type Edit, writeDeed } from '#web/write.ts'

/** What a shop has and may take out of use. */
export type OwnedKind = RecordKind & ('vise' | 'instrument' | 'machine' | 'stock')
type Named = { readonly id: string; readonly name: string }

/** A new record of the shop, or what differs of one there is, with the offer to put it back. */
export function keepRecord<Kind extends OwnedKind>(kind: Kind, before: (FieldsOf[Kind] & Named) | null, wanted: Partial<FieldsOf[Kind]>): void {
  const edit = (record: string, fields: Partial<FieldsOf[Kind]>) => writeDeed({ edits: [{ kind, record, fields } as Edit] })
  if (before === null) { edit(newId(), wanted); return }
  const keys = changedKeys(wanted, before)
  if (keys.length === 0) return
  const of = (from: Partial<FieldsOf[Kind]>) => Object.fromEntries(keys.map((key) => [key, from[key]])) as Partial<FieldsOf[Kind]>
  edit(before.id, of(wanted))
  const said = keys.some((key) => key !== 'retired') ? 'changed' : wanted.retired === true ? 'retired' : 'back in use'
  offerUndo(`${capital(before.name)}: ${said}.`, () => { edit(before.id, of(before)) })
}
