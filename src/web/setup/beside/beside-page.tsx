import type { ReactNode } from 'react'
import { Link } from '#web/parts/link.tsx'
import '#web/styles/beside.css'

type Props = { readonly title: string; readonly sheet: ReactNode; readonly children: ReactNode; readonly typedFirst?: boolean }

/** A screen beside the setup: drawing left, what it says right. `typedFirst`: on a phone the fields come before the drawing. */
export function BesidePage({ title, sheet, children, typedFirst }: Props) {
  return (
    <div className="beside" data-typed-first={typedFirst ? '' : undefined}>
      <section className="beside-sheet" aria-label="Sheet">{sheet}</section>
      <div className="beside-side">
        <Link to="/setup" className="back">Set up</Link>
        <h1>{title}</h1>
        {children}
      </div>
    </div>
  )
}
