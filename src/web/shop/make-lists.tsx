import { useState, type ReactNode } from 'react'
import type { MachineRecord } from '#model/machine-record.ts'
import { wordLength } from '#model/length.ts'
import type { StockRecord } from '#model/stock-record.ts'
import { conditionWords, machineWords, sayMoney } from '#words/say-make.ts'
import { Link } from '#web/parts/link.tsx'
import { useUnits } from '#web/units.ts'

/** What bars are made with. */
export function MachineList({ machines }: { readonly machines: readonly MachineRecord[] }) {
  const units = useUnits()
  return (
    <Retirable title="Machines" add={{ to: '/shop/machine/new', name: 'Add a machine' }} all={machines.toSorted((a, b) => (a.name < b.name ? -1 : 1))} none="None yet. Make offers only the ways for which the machines are here.">
      {({ id, name, kind, perHour, retired }) => (
        <Link to={`/shop/machine/${id}`} className="vise-link">
          <strong className="name-text">{name}{retired ? ' (retired)' : ''}</strong>
          <span className="small">{machineWords[kind]}; {perHour === null ? 'not priced' : `${sayMoney(perHour, units)} an hour`}</span>
        </Link>
      )}
    </Retirable>
  )
}

/** Raw material at hand or bought as needed. */
export function StockList({ stock }: { readonly stock: readonly StockRecord[] }) {
  const units = useUnits(), mm = (value: number) => wordLength(value, units), inOrder = stock.toSorted((a, b) => (a.steel === b.steel ? b.lengthMm - a.lengthMm : a.steel < b.steel ? -1 : 1))
  const sayCount = (count: number | null) => (count === null ? 'bought as needed' : count === 0 ? 'used up' : `${count} there`)
  return (
    <Retirable title="Stock" add={{ to: '/shop/stock/new', name: 'Add stock' }} all={inOrder} none="None yet: plates, lengths and offcuts that bars may be cut from, also those that are bought as needed.">
      {({ id, name, form, steel, condition, lengthMm, widthMm, thicknessMm, count, price, offcut, retired }) => (
        <Link to={`/shop/stock/${id}`} className="vise-link">
          <strong className="name-text">{name}{retired ? ' (retired)' : ''}</strong>
          <span className="small name-text">{steel}, {conditionWords[condition]}; {offcut ? 'offcut' : form} {mm(lengthMm)} × {mm(widthMm)} × {mm(thicknessMm)}; {sayCount(count)}; {sayMoney(price, units)}</span>
        </Link>
      )}
    </Retirable>
  )
}

type Listed<One> = { readonly title: string; readonly all: readonly One[]; readonly add: { readonly to: string; readonly name: string }; readonly none: string; readonly children: (one: One) => ReactNode }

function Retirable<One extends { readonly id: string; readonly retired: boolean }>({ title, all, add, none, children }: Listed<One>) {
  const [retired, setRetired] = useState(false), here = all.filter((one) => !one.retired), gone = all.length - here.length
  return (
    <section>
      <h2>{title}</h2>
      {here.length === 0 ? <p>{none}</p> : null}
      <ul className="rows">{(retired ? all : here).map((one) => <li key={one.id} className="instrument-row">{children(one)}</li>)}</ul>
      <div className="actions">
        <Link to={add.to} className="action">{add.name}</Link>
        {gone > 0 ? <button type="button" className="action" aria-pressed={retired} onClick={() => setRetired(!retired)}>{retired ? 'Leave out the retired' : `Show the retired (${gone})`}</button> : null}
      </div>
    </section>
  )
}
