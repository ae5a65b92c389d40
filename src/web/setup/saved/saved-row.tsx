import { useState } from 'react'
import { TextField } from '#web/parts/text-field.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { writeDeed } from '#web/write.ts'

type Props = {
  readonly kind: 'setup' | 'part'
  readonly record: { readonly id: string }
  readonly name: string
  readonly title: string
  readonly more: string
  readonly onOpen: () => void
  readonly onCopy: () => void
}

/** One kept setup or part: open it, copy it, call it something else, retire it. */
export function SavedRow({ kind, record: { id }, name, title, more, onOpen, onCopy }: Props) {
  const [renaming, setRenaming] = useState<string | null>(null)
  const edit = (fields: { readonly name?: string; readonly retired?: boolean }) => {
    const { name: called, ...rest } = fields
    writeDeed({ edits: [kind === 'setup' ? { kind, record: id, fields: { ...rest, ...(called === undefined ? {} : { title: called }) } } : { kind, record: id, fields }] })
  }
  const rename = () => {
    const called = (renaming ?? '').trim()
    setRenaming(null)
    if (called === name || (kind === 'part' && called === '')) return
    edit({ name: called })
    offerUndo(`${title} is called ${called || 'nothing'} now.`, () => edit({ name }))
  }
  const retire = () => {
    edit({ retired: true })
    offerUndo(`${title} retired.`, () => edit({ retired: false }))
  }
  return (
    <li className="setup-saved">
      <button type="button" className="setup-row setup-row--last" onClick={onOpen}>
        <strong className="name-text">{title}</strong><span className="name-text">{more}</span>
      </button>
      {renaming === null ? (
        <div className="actions">
          <button type="button" className="press" aria-label={`Copy ${title}`} onClick={onCopy}>Copy</button>
          <button type="button" className="press" aria-label={`Rename ${title}`} onClick={() => setRenaming(name)}>Rename</button>
          <button type="button" className="press" aria-label={`Retire ${title}`} onClick={retire}>Retire</button>
        </div>
      ) : (
        <form className="setup-rename" onSubmit={(event) => { event.preventDefault(); rename() }}>
          <TextField label="New name" value={renaming} maxLength={80} onChange={setRenaming} />
          <button type="submit" className="action">Keep</button>
        </form>
      )}
    </li>
  )
}
