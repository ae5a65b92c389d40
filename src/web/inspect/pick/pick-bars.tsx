import { useDeferredValue, useId, useMemo, useState } from 'react'
import { wordLength } from '#model/length.ts'
import { groupFinder } from '#web/rack/find-bars.ts'
import { type RackGroup, worstTrust } from '#web/rack/rack-bars.ts'
import { trustWords } from '#web/rack/say-bar.ts'
import { useUnits } from '#web/units.ts'
import '#web/styles/rack.css'

type Props = { readonly groups: readonly RackGroup[]; readonly chosen: readonly string[]; readonly onChange: (bars: readonly string[]) => void }

/** So many rows are shown; more would only be scrolled past, the search names them. */
const mostRows = 60

/** Bars out of the rack, mates together at one touch. Chosen ones stay in the order they were chosen in. */
export function PickBars({ groups, chosen, onChange }: Props) {
  const units = useUnits(), id = useId()
  const [typed, setTyped] = useState(''), query = useDeferredValue(typed)
  const find = useMemo(() => groupFinder(groups.filter((group) => worstTrust(group) !== 'gone'), units), [groups, units]), found = find(query)
  const toggle = ({ bars }: RackGroup) => {
    const ids = bars.map(({ record }) => record.id), on = ids.every((bar) => chosen.includes(bar))
    onChange(on ? chosen.filter((bar) => !ids.includes(bar)) : [...chosen, ...ids.filter((bar) => !chosen.includes(bar))])
  }
  return (
    <div className="pick">
      <div className="field">
        <input id={id} type="search" autoComplete="off" placeholder="35 · 7/8 · B4 · name · code" value={typed} onChange={(event) => setTyped(event.target.value)} />
        <label htmlFor={id}>Find a bar</label>
      </div>
      <ul>{found.slice(0, mostRows).map((group) => <Row key={group.key} group={group} on={group.bars.every(({ record }) => chosen.includes(record.id))} onToggle={() => toggle(group)} />)}</ul>
      {found.length > mostRows ? <p className="small">And {found.length - mostRows} more: type a height, slot or name.</p> : null}
      {found.length === 0 ? <p>No bar fits “{typed}”.</p> : null}
    </div>
  )
}

function Row({ group, on, onToggle }: { readonly group: RackGroup; readonly on: boolean; readonly onToggle: () => void }) {
  const units = useUnits(), { bars } = group, [first] = bars, { mark, word } = trustWords[worstTrust(group)]
  const names = [...new Set([first.mates?.name, ...bars.map(({ record }) => record.name)].filter(Boolean))]
  return (
    <li>
      <label className="pick-row">
        <input type="checkbox" checked={on} onChange={onToggle} />
        <strong>{first.calledMm === null ? '?' : wordLength(first.calledMm, units)}</strong>
        <span className="rack-what">
          <span className="name-text">{names.join(' · ') || (bars.length > 1 ? 'mates' : 'odd bar')}{bars.length > 1 ? ` (${bars.length})` : ''}</span>
          <span className="small"><span aria-hidden="true" className="mark">{mark}</span> {word} · {wordLength(first.record.thicknessMm, units)} × {wordLength(first.record.lengthMm, units)}</span>
        </span>
        <span className="rack-slot name-text">{first.slot?.name}</span>
      </label>
    </li>
  )
}
