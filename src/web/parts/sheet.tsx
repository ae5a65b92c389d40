import { useEffect, useId, useRef, type ReactNode } from 'react'

/** A sheet laid over the screen, shown as long as it is rendered; Escape, the cross and a tap beside it put it away. */
export function Sheet({ title, onClose, children }: { readonly title: string; readonly onClose: () => void; readonly children: ReactNode }) {
  const sheet = useRef<HTMLDialogElement>(null), id = useId()
  useEffect(() => {
    const dialog = sheet.current
    dialog?.showModal()
    return () => dialog?.close()
  }, [])
  return (
    <dialog ref={sheet} className="sheet" aria-labelledby={id} closedby="any" onCancel={(event) => { event.preventDefault(); onClose() }}>
      <div className="sheet-inside">
        <header className="sheet-head">
          <h2 id={id}>{title}</h2>
          <button type="button" className="press" aria-label="Close" onClick={onClose}>×</button>
        </header>
        {children}
      </div>
    </dialog>
  )
}
