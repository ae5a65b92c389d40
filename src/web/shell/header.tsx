import { useState } from 'react'
import { useDevice } from '#web/device.ts'
import { Link } from '#web/parts/link.tsx'
import type { Place } from '#web/router.ts'
import { PersonSheet } from '#web/shell/person-sheet.tsx'
import { SavedState } from '#web/shell/saved-state.tsx'
import { useUnits } from '#web/units.ts'

const tabs: readonly { readonly place: Place; readonly name: string }[] = [
  { place: 'setup', name: 'Set up' }, { place: 'inspect', name: 'Inspect' }, { place: 'rack', name: 'Rack' }, { place: 'make', name: 'Make' }, { place: 'shop', name: 'Shop' },
]

/** The head of the sheet: the places, where the work is saved, what numbers are in, who works here. */
export function Header({ place }: { readonly place: Place | null }) {
  const { person } = useDevice(), units = useUnits()
  const [asking, setAsking] = useState(false)
  return (
    <header className="shell-head">
      <Link to="/" className="shell-name">Twinrest</Link>
      <nav className="shell-tabs" aria-label="Places">
        {tabs.map((tab) => <Link key={tab.place} to={`/${tab.place}`} aria-current={tab.place === place ? 'page' : undefined}>{tab.name}</Link>)}
      </nav>
      <div className="shell-about">
        <SavedState />
        <Link to="/shop" className="units" aria-label={`Units: ${units.length}, decimal mark ${units.decimalMark === ',' ? 'comma' : 'point'}. Change in Shop`}>
          {units.length} · 0{units.decimalMark}00
        </Link>
        <button type="button" className="initials" aria-label={person ? `${person.initials} works here. Change` : 'Nobody has said who works here. Choose initials'} onClick={() => setAsking(true)}>
          <span>{person?.initials ?? '–'}</span>
        </button>
      </div>
      {asking ? <PersonSheet onClose={() => setAsking(false)} /> : null}
    </header>
  )
}
