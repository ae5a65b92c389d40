import { useState, type FormEvent } from 'react'
import type { ShopFields } from '#model/shop-record.ts'
import { Choice } from '#web/parts/choice.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { writeDeed } from '#web/write.ts'

/** The name that stands on prints, and the paper they are made for. */
export function ShopName({ name, paper }: Pick<ShopFields, 'name' | 'paper'>) {
  // Null: nothing is being typed, and the name is shown as it stands, whoever changed it.
  const [draft, setDraft] = useState<string | null>(null), typed = draft ?? name
  const save = (event: FormEvent) => {
    event.preventDefault()
    setDraft(null)
    if (typed.trim() === name) return
    writeDeed({ edits: [{ kind: 'shop', record: 'shop', fields: { name: typed.trim() } }] })
    offerUndo('The name of the shop: changed.', () => { writeDeed({ edits: [{ kind: 'shop', record: 'shop', fields: { name } }] }) })
  }
  return (
    <>
      <form className="field-list" onSubmit={save}>
        <TextField label="name, as on prints" value={typed} onChange={(text) => setDraft(text === name ? null : text)} maxLength={80} />
        <button className="action" disabled={typed.trim() === name}>Save the name</button>
      </form>
      <Choice label="Paper" value={paper} onChange={(value) => writeDeed({ edits: [{ kind: 'shop', record: 'shop', fields: { paper: value } }] })} options={[{ value: 'A4', label: 'A4' }, { value: 'Letter', label: 'Letter' }]} />
    </>
  )
}
