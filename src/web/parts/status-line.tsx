import type { ReactNode } from 'react'

/** One sentence about what just happened or what is in the way; read out when it changes. `danger` for what was refused. */
export function StatusLine({ children, danger = false }: { readonly children: ReactNode; readonly danger?: boolean }) {
  return danger ? <p className="status status--danger" role="alert">{children}</p> : <output className="status">{children}</output>
}
