import { useState } from 'react'
import type { InstrumentRecord } from '#model/instrument-record.ts'
import { Link } from '#web/parts/link.tsx'
import { dueOf } from '#web/shop/instruments/due.ts'
import { sayFigures, sayKind } from '#web/shop/instruments/say-instrument.ts'
import { sayDay, today } from '#web/today.ts'
import { useTerms, useUnits } from '#web/units.ts'

/** What the shop measures with: every figure with where it is from, and what is overdue. */
export function InstrumentList({ instruments }: { readonly instruments: readonly InstrumentRecord[] }) {
  const { indicator, gauge } = useTerms()
  const [retired, setRetired] = useState(false)
  const inOrder = instruments.toSorted((a, b) => kinds.indexOf(a.figures.is) - kinds.indexOf(b.figures.is) || (a.name < b.name ? -1 : 1))
  const here = inOrder.filter((one) => !one.retired), gone = inOrder.length - here.length
  return (
    <section>
      <h2>Instruments and plate</h2>
      {here.length === 0 ? <p>None yet. Without them a check can be kept, but its uncertainty is not known, and it proves nothing. Start with the plate, the {indicator} and the {gauge} blocks.</p> : null}
      <ul className="rows">{(retired ? inOrder : here).map((one) => <Row key={one.id} one={one} />)}</ul>
      <div className="actions">
        <Link to="/shop/instrument/new" className="action">Add an instrument or plate</Link>
        {gone > 0 ? <button type="button" className="action" aria-pressed={retired} onClick={() => setRetired(!retired)}>{retired ? 'Leave out the retired' : `Show the retired (${gone})`}</button> : null}
      </div>
    </section>
  )
}

const kinds = ['plate', 'indicator', 'gauge blocks', 'micrometer']

function Row({ one: { id, name, figures, dueOn, retired } }: { readonly one: InstrumentRecord }) {
  const units = useUnits(), due = dueOf(dueOn, today())
  return (
    <li className="instrument-row">
      <Link to={`/shop/instrument/${id}`} className="vise-link">
        <strong className="name-text">{name}{retired ? ' (retired)' : ''}</strong>
        <span className="small name-text">{sayKind(figures.is, units)}; {sayFigures(figures, units)}</span>
        <span className={due === 'overdue' ? 'overdue' : 'small'}><span aria-hidden="true">{due === 'overdue' ? '! ' : ''}</span>{
          due === 'not kept' ? 'no due date kept' : due === 'overdue' ? `overdue: was due ${sayDay(dueOn!)}` : due === 'soon' ? `due soon: ${sayDay(dueOn!)}` : `due ${sayDay(dueOn!)}`
        }</span>
      </Link>
    </li>
  )
}
