import { useDeferredValue, useId, useMemo, useState } from 'react'
import { readLabel } from '#model/label-code.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { NewBarFields } from '#web/inspect/check/panels/new-bar-fields.tsx'
import { newBarAfter } from '#web/inspect/draft/new-bars.ts'
import { changeForm } from '#web/inspect/draft/draft-edits.ts'
import { stationsFor } from '#web/inspect/draft/new-draft.ts'
import { groupFinder } from '#web/rack/find-bars.ts'
import { type RackGroup, rackGroups, worstTrust } from '#web/rack/rack-bars.ts'
import { nameOfBar, trustWords } from '#web/rack/say-bar.ts'

/** So many are listed at once; the rest is found by typing. */
const listed = 12

/** Bars out of the rack: found by height, name or slot, or named by the code on their label, which a scanner types. New ones come into it with the check. */
export function BarsPanel() {
  const { shop, draft: { id, form, typed }, nameOf, units } = useCheckDesk()
  const groups = useMemo(() => rackGroups(shop).filter((group) => worstTrust(group) !== 'gone'), [shop])
  const [sought, setSought] = useState(''), [said, setSaid] = useState<string | null>(null), field = useId()
  const query = useDeferredValue(sought), find = useMemo(() => groupFinder(groups, units), [groups, units]), found = find(query)
  const chosen = new Set(form.bars.map(({ bar }) => bar))
  const put = (bars: readonly string[]) => {
    // As many stations as the bars ask for, until somebody has chosen otherwise or begun.
    const untouched = Object.keys(typed).length === 0 && form.stations === (stationsFor([...chosen], shop) ?? 3)
    const kept = form.bars.filter(({ bar }) => bars.includes(bar)), more = bars.filter((bar) => !chosen.has(bar))
    changeForm(id, {
      bars: [...kept, ...more.map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' }))],
      ...(untouched ? { stations: stationsFor(bars, shop) ?? form.stations } : {}),
    })
  }
  const idsOf = (group: RackGroup) => group.bars.map(({ record }) => record.id)
  const toggle = (group: RackGroup) => {
    const ids = idsOf(group), all = ids.every((bar) => chosen.has(bar))
    put(all ? [...chosen].filter((bar) => !ids.includes(bar)) : [...chosen, ...ids.filter((bar) => !chosen.has(bar))])
  }
  const enter = () => {
    const label = readLabel(sought), bar = label && label.kind !== 'slot' ? shop.bars.find((one) => one.code === label.code) : undefined
    const first = bar ? null : find(sought)[0]
    if (bar) put([...new Set([...chosen, bar.id])])
    else if (first && sought.trim() !== '') put([...new Set([...chosen, ...idsOf(first)])])
    setSaid(bar || first ? null : `No bar fits “${sought}”.`)
    if (bar || first) setSought('')
  }
  return (
    <>
      <div className="field">
        <input
          id={field} type="search" autoComplete="off" value={sought} placeholder="35 · 7/8 · B4 · name · scan" onChange={(event) => { setSought(event.target.value); setSaid(null) }}
          onKeyDown={(event) => { if (event.key === 'Enter') { event.preventDefault(); enter() } }}
        />
        <label htmlFor={field}>Find a bar, or scan its label</label>
      </div>
      {said ? <p className="status status--danger" role="alert">{said}</p> : null}
      {form.bars.length > 0 ? (
        <ul className="insp-chosen" aria-label="Bars of this check">
          {form.bars.map(({ bar }) => (
            <li key={bar}><span className="name-text">{nameOf(bar)}</span><button type="button" className="press" aria-label={`Take ${nameOf(bar)} out of this check`} onClick={() => put([...chosen].filter((one) => one !== bar))}>×</button></li>
          ))}
        </ul>
      ) : null}
      <NewBarFields />
      <button type="button" className="press insp-new" onClick={() => changeForm(id, { bars: [...form.bars, newBarAfter(form.bars)] })}>A bar that is not in the rack</button>
      <ul aria-label="Bars of the rack">
        {found.slice(0, listed).map((group) => {
          const all = idsOf(group).every((bar) => chosen.has(bar)), [first] = group.bars
          return (
            <li key={group.key}>
              <button type="button" className="setup-row" aria-pressed={all} onClick={() => toggle(group)}>
                <span className="setup-row-figure">{all ? '✓' : '+'}</span>
                <span className="setup-row-what"><strong className="name-text">{nameOfBar(first, units)}</strong><span className="small">{group.bars.length === 1 ? 'one bar' : `${group.bars.length} mates`} · {trustWords[worstTrust(group)].word}</span></span>
                <span className="setup-row-slot">{first.slot?.name}</span>
              </button>
            </li>
          )
        })}
      </ul>
      {found.length > listed ? <p className="setup-lines">{found.length - listed} more: type a height, name or slot.</p> : null}
    </>
  )
}
