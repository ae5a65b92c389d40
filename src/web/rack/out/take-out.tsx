import { useState, type FormEvent } from 'react'
import { type Holder, signOut } from '#engine/rack/signing.ts'
import type { OutTo } from '#model/bar-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { useDevice } from '#web/device.ts'
import { nowIso } from '#web/new-id.ts'
import { Choice } from '#web/parts/choice.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { TextField } from '#web/parts/text-field.tsx'
import { type DueIn, dueDay, dueOptions } from '#web/rack/out/due-in.ts'
import { knownHolders } from '#web/rack/out/holders.ts'
import { sign } from '#web/rack/out/sign.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { nameOfBars } from '#web/rack/say-bar.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly bars: readonly RackBar[]; readonly shop: ShopSnapshot }

/** So many stand in view; the others are one touch further. */
const inView = 8

/** One tap on initials or a vise, and the bars are out. */
export function TakeOut({ bars, shop }: Props) {
  const units = useUnits(), { person } = useDevice(), [dueIn, setDueIn] = useState<DueIn>('whenever')
  const holders = knownHolders(shop, person?.id ?? null)
  const take = (holder: Holder, name: string) => {
    sign(signOut(bars.map(({ record }) => record), holder, { atIso: nowIso(), dueOn: dueDay(dueIn) }), `${nameOfBars(bars, units)}: out, ${name}.`)
  }
  const buttons = (some: typeof holders) => some.map(({ key, name, holder }) => <button key={key} type="button" className="action name-text" onClick={() => take(holder, name)}>{name}</button>)
  return (
    <>
      <h2>Take {bars.length === 1 ? 'it' : 'them'} out to</h2>
      <div className="bar-actions">{buttons(holders.slice(0, inView))}</div>
      {holders.length > inView ? <details className="sum"><summary>{holders.length - inView} more</summary><div className="bar-actions">{buttons(holders.slice(inView))}</div></details> : null}
      <details className="sum">
        <summary>Due back, someone else</summary>
        <div className="sign">
          <SelectField label="due back" value={dueIn} onChange={(value) => setDueIn(value as DueIn)} options={dueOptions} />
          <Elsewhere onTake={take} />
        </div>
      </details>
    </>
  )
}

const elsewhere: readonly { readonly value: OutTo; readonly label: string }[] = [{ value: 'person', label: 'a person' }, { value: 'machine', label: 'a machine' }, { value: 'other shop', label: 'another shop' }]

/** A name that has to be typed, once. */
function Elsewhere({ onTake }: { readonly onTake: (holder: Holder, name: string) => void }) {
  const [to, setTo] = useState<OutTo>('other shop'), [typed, setTyped] = useState(''), [error, setError] = useState<string | null>(null)
  const take = (event: FormEvent) => {
    event.preventDefault()
    const who = typed.trim()
    if (who === '') return setError('Type who or what takes it.')
    setTyped('')
    onTake({ to, who }, who)
  }
  return (
    <form className="sign" onSubmit={take} noValidate>
      <Choice label="Who takes it" value={to} onChange={setTo} options={elsewhere} />
      <TextField label="name" value={typed} onChange={setTyped} error={error} maxLength={80} />
      {to === 'other shop' ? <p className="small">Back from another shop it is to be looked at first, however it comes.</p> : null}
      <button className="action">Out to this name</button>
    </form>
  )
}
