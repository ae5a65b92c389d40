import { useDeferredValue, useId, useState } from 'react'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { Link } from '#web/parts/link.tsx'
import { findBars } from '#web/rack/find-bars.ts'
import { type RackBar, type RackGroup, worstTrust } from '#web/rack/rack-bars.ts'
import { RackShelf } from '#web/rack/rack-shelf.tsx'
import { trustWords } from '#web/rack/say-bar.ts'
import { useUnits } from '#web/units.ts'

/** Search, the shelf, and a row for each pair, set or odd bar; retired ones only when they are asked for. */
export function RackList({ groups, chosen }: { readonly groups: readonly RackGroup[]; readonly chosen: string | null }) {
  const units = useUnits(), id = useId()
  const [typed, setTyped] = useState(''), [retired, setRetired] = useState(false)
  const query = useDeferredValue(typed)
  const gone = groups.filter((group) => worstTrust(group) === 'gone').length
  const found = findBars(retired ? groups : groups.filter((group) => worstTrust(group) !== 'gone'), query, units)
  return (
    <>
      <div className="find">
        <div className="field">
          <input id={id} type="search" autoComplete="off" placeholder="35 · 7/8 · B4 · name" value={typed} onChange={(event) => setTyped(event.target.value)} />
          <label htmlFor={id}>Find a bar</label>
        </div>
        <output className="small">{sayCount(found)}</output>
      </div>
      <RackShelf groups={found} />
      <ul className="rack-rows">
        {found.map((group) => <Row key={group.key} group={group} units={units} chosen={group.bars.some(({ record }) => record.id === chosen)} />)}
      </ul>
      {found.length === 0 ? <p className="nothing">No bar fits “{typed}”. Search by height, slot, name or code.</p> : null}
      {gone > 0 ? <button type="button" className="press retired" aria-pressed={retired} onClick={() => setRetired(!retired)}>{retired ? 'Leave out the retired' : `Show the retired (${gone})`}</button> : null}
    </>
  )
}

function Row({ group: { bars, ...group }, units, chosen }: { readonly group: RackGroup; readonly units: Units; readonly chosen: boolean }) {
  const [first] = bars, { mark, word } = trustWords[worstTrust({ bars, ...group })]
  const names = [first.mates?.name, ...new Set(bars.map(({ record }) => record.name))].filter((name, at, all) => name && all.indexOf(name) === at)
  return (
    <li>
      <Link to={`/rack/${first.record.id}`} className="rack-row" aria-current={chosen ? 'true' : undefined}>
        <span className="rack-height">
          <strong>{first.calledMm === null ? '?' : wordLength(first.calledMm, units)}</strong>
          <span className="small">{standings(bars)}</span>
        </span>
        <span className="rack-what">
          <span className="name-text">{names.length > 0 ? names.join(' · ') : bars.length > 1 ? 'mates' : 'odd bar'}{bars.length > 2 ? ` (${bars.length})` : ''}</span>
          <span className="small"><span aria-hidden="true" className="mark">{mark}</span> {word} · {wordLength(first.record.thicknessMm, units)} × {wordLength(first.record.lengthMm, units)}{elsewhere(bars)}</span>
        </span>
        <span className="rack-slot name-text">{[...new Set(bars.map(({ slot }) => slot?.name).filter(Boolean))].join(' ')}</span>
      </Link>
    </li>
  )
}

function standings(bars: RackGroup['bars']): string {
  const [first] = bars
  return bars.every(({ standing }) => standing === first.standing) ? first.standing : 'partly marked'
}

function elsewhere(bars: readonly RackBar[]): string {
  const places = new Set(bars.flatMap(({ elsewhere: place, record: { where } }) => (place === null ? [] : [where.at === 'out' ? `out with ${place}` : `in ${place}`])))
  return places.size === 0 ? '' : ` · ${[...places].join(', ')}`
}

function sayCount(groups: readonly RackGroup[]): string {
  const bars = groups.reduce((sum, group) => sum + group.bars.length, 0)
  return bars === 1 ? '1 bar' : `${bars} bars`
}
