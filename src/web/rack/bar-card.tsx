import { useState } from 'react'
import { wordLength } from '#model/length.ts'
import type { BarEventKind } from '#model/bar-event.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { Choice } from '#web/parts/choice.tsx'
import { Link } from '#web/parts/link.tsx'
import { happened } from '#web/rack/bar-deeds.ts'
import { BarProof } from '#web/rack/bar-proof.tsx'
import { BarPicture } from '#web/rack/bar-picture.tsx'
import { BarHistory } from '#web/rack/bar-history.tsx'
import { SignBars } from '#web/rack/out/sign-bars.tsx'
import { WhereClash } from '#web/rack/out/where-clash.tsx'
import type { RackBar, RackGroup } from '#web/rack/rack-bars.ts'
import { nameOfBars, sayState, trustWords } from '#web/rack/say-bar.ts'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'

type Telling = { readonly kind: BarEventKind; readonly name: string }

/** What can be said of a bar as it stands; of one in work or gone other things than of one in use. */
const tellings = ({ condition: { open, magnetised } }: RackBar): readonly Telling[] => [
  { kind: 'looked over', name: 'Looked over' }, { kind: 'knocked', name: 'Knocked' }, { kind: 'drilled', name: 'Drilled' },
  ...(open.includes('drilled') || open.includes('nicked') ? [{ kind: 'stoned' as const, name: 'Stoned' }] : []),
  ...(open.includes('reground') ? [{ kind: 'marked anew' as const, name: 'Marked anew' }] : []),
  magnetised ? { kind: 'demagnetised', name: 'Demagnetised' } : { kind: 'on the chuck', name: 'On the chuck' },
  { kind: 'made drill bar', name: 'Now a beater' },
]

/** One bar: its height, its slot, why it stands as it does, its sizes, and what can be said of it in one tap. */
export function BarCard({ bar, group, shop }: { readonly bar: RackBar; readonly group: RackGroup; readonly shop: ShopSnapshot }) {
  const units = useUnits()
  const [both, setBoth] = useState(false)
  const { record, calledMm, trust } = bar
  const meant = both ? group.bars : [bar], called = nameOfBars(meant, units)
  const choose = (which: string) => {
    setBoth(which === 'all')
    if (which !== 'all') go(`/rack/${which}`, { replace: true })
  }
  const say = (kind: BarEventKind) => happened(kind, meant.map((one) => one.record.id), called)
  return (
    <article className="side-page">
      <Link to="/rack" className="back">All bars</Link>
      <header className="bar-head">
        <h1 className="big-line"><strong className="big">{calledMm === null ? '?' : wordLength(calledMm, units)}</strong> <span className="name-text">{record.name || bar.mates?.name || 'odd bar'}</span></h1>
        {bar.slot ? <p className="slot-box"><strong className="name-text">{bar.slot.name}</strong><span>slot</span></p> : null}
      </header>
      <p className="name-text"><span className="mark" aria-hidden="true">{trustWords[trust].mark}</span> {sayState(bar)}</p>
      <WhereClash bar={bar} group={group} shop={shop} />
      <SignBars bar={bar} group={group} shop={shop} />
      <BarPicture bar={bar} />
      <BarProof bar={bar} shop={shop} />
      {group.bars.length > 1 ? (
        <Choice
          label={bar.mates?.name ? `Mates: ${bar.mates.name}` : 'Mates'} value={both ? 'all' : record.id} onChange={choose}
          options={[...group.bars.map((mate) => ({ value: mate.record.id, label: sayMate(mate, group, units) })), { value: 'all', label: group.bars.length === 2 ? 'both' : `all ${group.bars.length}` }]}
        />
      ) : null}
      {record.note ? <p className="name-text note">{record.note}</p> : null}
      <div className="bar-actions">
        {trust === 'gone' ? null : tellings(bar).map(({ kind, name }) => <button key={kind} type="button" className="action" onClick={() => say(kind)}>{name}</button>)}
        <Link to={`/rack/${record.id}/edit`} className="action">Change</Link>
        <Link to={`/rack/regrind/${record.id}`} className="action">Regrind</Link>
        <Link to={`/rack/labels/${record.id}`} className="action">Label</Link>
        {trust === 'gone' ? null : <button type="button" className="action" onClick={() => say('gone')}>Retire</button>}
      </div>
      <BarHistory bars={meant} shop={shop} />
    </article>
  )
}

/** Mates of one name are told apart by the begin of their codes. */
function sayMate({ trust, record, heightMm }: RackBar, { bars }: RackGroup, units: Units): string {
  const alone = record.name !== '' && bars.filter((bar) => bar.record.name === record.name).length === 1
  return `${trustWords[trust].mark} ${alone ? record.name : `${record.name} ${record.code.slice(0, 4)}`.trim()}, ${heightMm === null ? '?' : wordLength(heightMm, units, exact(units))}`
}

/** A micrometre is the signal: heights of bars are shown to it. */
function exact({ length }: Units): { readonly decimals: number } {
  return { decimals: length === 'mm' ? 3 : 5 }
}
