import type { ReactNode } from 'react'
import { Link } from '#web/parts/link.tsx'
import '#web/styles/beside.css'

type Props = { readonly title: string; readonly sheet: ReactNode; readonly children: ReactNode; readonly back?: { readonly to: string; readonly name: string } }

/** A screen beside the setup: drawing left, what it says right. */
export function BesidePage({ title, sheet, children, back = { to: '/setup', name: 'Set up' } }: Props) {
  return (
    <div className="beside">
      <section className="beside-sheet" aria-label="Sheet">{sheet}</section>
      <div className="beside-side">
        <Link to={back.to} className="back">{back.name}</Link>
        <h1>{title}</h1>
        {children}
      </div>
    </div>
  )
}
