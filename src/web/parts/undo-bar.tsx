import { useSyncExternalStore } from 'react'

/** Something that was done, and how to take it back. */
type Done = { readonly said: string; readonly undo: () => void }

let done: Done | null = null
const listeners = new Set<() => void>()

/** Instead of "are you sure": say what was done and offer to take it back, until the next thing is done. */
export function offerUndo(said: string, undo: () => void): void {
  setDone({ said, undo })
}

/** Stands until the next thing is done or the person puts it away: nobody is hurried by a clock. */
export function UndoBar() {
  const now = useSyncExternalStore((tell) => { listeners.add(tell); return () => listeners.delete(tell) }, () => done)
  return (
    <output>
      {now ? (
        <span className="undo">
          <span className="undo-said name-text">{now.said}</span>
          <button type="button" className="action" onClick={() => { now.undo(); setDone(null) }}>Undo</button>
          <button type="button" className="action" aria-label="Put this message away" onClick={() => setDone(null)}>×</button>
        </span>
      ) : null}
    </output>
  )
}

function setDone(next: Done | null): void {
  done = next
  for (const tell of listeners) tell()
}
