import { useState } from 'react'
import { newId } from '#web/new-id.ts'
import { Sheet } from '#web/parts/sheet.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { offerUndo, UndoBar } from '#web/parts/undo-bar.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { SavedParts } from '#web/setup/saved/saved-parts.tsx'
import { SavedSetups } from '#web/setup/saved/saved-setups.tsx'
import { newState, type SetupState } from '#web/setup/state/setup-state.ts'
import { writeDeed } from '#web/write.ts'

type Props = { readonly onClose: () => void; readonly keep: () => void }

/** What is on the screen under a name, what was kept before, and parts that come back. */
export function SavedSheet({ onClose, keep }: Props) {
  const { state, dispatch, units } = useDesk()
  const [find, setFind] = useState('')
  const open = (next: SetupState, said: string) => { dispatch({ do: 'put', state: next }); offerUndo(said, () => dispatch({ do: 'put', state })); onClose() }
  const nameIt = state.title.trim() !== '', empty = state.form.height.trim() === ''
  const keepPart = () => {
    const id = newId()
    writeDeed({ edits: [{ kind: 'part', record: id, fields: { name: state.title.trim(), note: '', form: state.form, retired: false } }] })
    dispatch({ do: 'put', state: { ...state, partId: id } })
    onClose()
  }
  return (
    <Sheet title="Save or open" onClose={onClose}>
      <section className="setup-save">
        <TextField label="Title" value={state.title} maxLength={80} onChange={(text) => dispatch({ do: 'name setup', text })} />
        <TextField label="Operation" value={state.operation} maxLength={80} onChange={(text) => dispatch({ do: 'name operation', text })} />
        <div className="actions">
          <button type="button" className="action main" disabled={empty} onClick={() => { keep(); onClose() }}>Save setup</button>
          <button type="button" className="action" disabled={empty || !nameIt} onClick={keepPart}>Save as part</button>
          <button type="button" className="action" onClick={() => open(newState(units.length, state.viseId), 'The screen was cleared.')}>Start new</button>
        </div>
        {empty ? <p className="small">Nothing to save yet: the part has no height.</p> : nameIt ? null : <p className="small">A part needs a title to be found by; a setup can be kept without.</p>}
      </section>
      <TextField label="Find by title, operation or part" value={find} maxLength={80} onChange={setFind} />
      <SavedSetups find={find} open={open} />
      <SavedParts find={find} open={open} />
      <UndoBar />
    </Sheet>
  )
}
