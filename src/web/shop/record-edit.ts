import type { RecordKind } from '#model/change.ts'
import type { FieldsOf } from '#model/record-fields.ts'
import { capital } from '#words/wording.ts'
import { newId } from '#web/new-id.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { type Edit, writeDeed } from '#web/write.ts'

type Named = { readonly id: string; readonly name: string }

/** A new record of the shop, or what differs of one there is, with the offer to put it back. */
export function keepRecord<Kind extends RecordKind & ('machine' | 'stock')>(kind: Kind, before: (FieldsOf[Kind] & Named) | null, wanted: Partial<FieldsOf[Kind]>): void {
  const edit = (record: string, fields: Partial<FieldsOf[Kind]>) => writeDeed({ edits: [{ kind, record, fields } as Edit] })
  if (before === null) { edit(newId(), wanted); return }
  const keys = (Object.keys(wanted) as (keyof FieldsOf[Kind])[]).filter((key) => JSON.stringify(wanted[key]) !== JSON.stringify(before[key]))
  if (keys.length === 0) return
  const of = (from: Partial<FieldsOf[Kind]>) => Object.fromEntries(keys.map((key) => [key, from[key]])) as Partial<FieldsOf[Kind]>
  edit(before.id, of(wanted))
  offerUndo(`${capital(before.name)}: changed.`, () => { edit(before.id, of(before)) })
}
