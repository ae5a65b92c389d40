import { useMemo, useState } from 'react'
import { wordLength } from '#model/length.ts'
import type { SetupRecord } from '#model/setup-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { listOf } from '#words/wording.ts'
import { SelectField } from '#web/parts/select-field.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { rackHere, type RackPair } from '#web/setup/beside/rack-here.ts'
import { dayList } from '#web/setup/day/day-list.ts'
import { sayPart } from '#web/setup/saved/say-setup.ts'
import { dayOf, sayDay, today } from '#web/today.ts'
import { useTerms, useUnits } from '#web/units.ts'

const mostListed = 60

/** What to take out of the rack for the setups of a day, or for all operations of one part. */
export function DayScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), terms = useTerms(), pairs = useMemo(() => trustedFirst(rackHere(shop, units).pairs), [shop, units])
  const all = useMemo(() => shop.setups.filter(({ retired }) => !retired).toSorted((a, b) => (a.usedAtIso < b.usedAtIso ? 1 : -1)).slice(0, mostListed), [shop.setups])
  const ofToday = all.filter(({ usedAtIso }) => dayOf(usedAtIso) === today()).map(({ id }) => id)
  const [chosen, setChosen] = useState<readonly string[]>(() => ofToday.toReversed()), [part, setPart] = useState('')
  const setups = useMemo(() => chosen.flatMap((id) => all.find((setup) => setup.id === id) ?? []), [chosen, all])
  const day = useMemo(() => dayList(shop, setups, pairs), [shop, setups, pairs]), { list, many, operations } = day
  const parts = [...new Map(all.flatMap((setup) => { const key = partKey(setup); return key === null ? [] : [[key, shop.parts.find(({ id }) => id === setup.partId)?.name ?? setup.title] as const] }))]
  const takePart = (key: string) => { setPart(key); if (key !== '') setChosen(all.filter((setup) => partKey(setup) === key).map(({ id }) => id).toReversed()) }
  const toggle = (id: string) => { setPart(''); setChosen(chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id]) }
  const nameOf = (k: number) => nameOfSetup(setups[k]!)
  return (
    <BesidePage title="Pull list" typedFirst sheet={setups.length === 0 ? <p className="small">Choose setups: what to take out of the rack stands here.</p> : (
      <section className="beside-answer" aria-label="Answer" aria-live="polite">
        <h2>{list.one.length > 0 ? `One pair serves all: ${pairs[list.one[0]!]!.label}` : list.pull.length === 0 ? 'No pair serves' : `${list.pull.length} ${list.pull.length === 1 ? 'pair' : 'pairs'}, ${list.changes} ${list.changes === 1 ? 'change' : 'changes'}`}</h2>
        <ul className="beside-rows">
          {list.pull.map(({ pair, serves }) => (
            <li key={pair}><div className="setup-first"><p className="big-line"><strong className="day-pair name-text">{pairs[pair]!.label}</strong></p><p className="slot-box"><strong className="name-text">{pairs[pair]!.slot}</strong><span>slot</span></p></div><span>for {listOf(serves.map(nameOf))}{pairs[pair]!.state}</span></li>
          ))}
        </ul>
        {list.unserved.length === 0 ? null : <p className="beside-warn">No pair on edge serves {listOf(list.unserved.map(nameOf))}: open it on Set up, where the other ways stand.</p>}
        {many === null || setups.length < 2 ? null : many.oneMm === null ? <p>No one height could serve all of them: their heights that work have none in common.</p>
          : <p>One height for all would be {wordLength(many.oneMm.lowMm, units)} to {wordLength(many.oneMm.highMm, units)}.</p>}
        <h3>In this order</h3>
        <ol className="beside-points" data-counted="">
          {operations.map(({ setup, window, refused }, k) => (
            <li key={setup.id}><strong className="name-text">{nameOf(k)}</strong>{shop.vises.find(({ id }) => id === setup.viseId)?.name}: {refused ? sayRefusal(refused, units) : window && `heights that work ${wordLength(window.lowMm, units)} to ${wordLength(window.highMm, units)}`}</li>
          ))}
        </ol>
      </section>
    )}>
      <p>All operations of a part, or the setups of today: one pair for all of them where one does, else the fewest changes. They are run in the order in which you touch them.</p>
      {parts.length === 0 ? null : <SelectField label="all operations of" value={part} onChange={takePart} options={[{ value: '', label: 'choose a part' }, ...parts.map(([value, label]) => ({ value, label }))]} />}
      {all.length === 0 ? <p>No setup was kept yet. Keep one on Set up by <em>Use this pair</em> or <em>Save</em>.</p> : null}
      <ul aria-label="Setups">
        {all.map((setup) => (
          <li key={setup.id}>
            <button type="button" className="setup-row setup-row--last" aria-pressed={chosen.includes(setup.id)} onClick={() => toggle(setup.id)}>
              <strong className="name-text">{chosen.includes(setup.id) ? `${chosen.indexOf(setup.id) + 1}. ` : ''}{nameOfSetup(setup)}</strong>
              <span className="name-text">{[shop.vises.find(({ id }) => id === setup.viseId)?.name ?? terms.vise, ...(isNamed(setup) ? [sayPart(setup.form)] : []), dayOf(setup.usedAtIso) === today() ? 'today' : sayDay(setup.usedAtIso).replaceAll(' ', '\u00a0')].join(' · ')}</span>
            </button>
          </li>
        ))}
      </ul>
      <Cautions situations={['look first']} />
    </BesidePage>
  )
}

/** The order in which pairs are liked: trusted before others, then the lowest. */
const trustedFirst = (pairs: readonly RackPair[]): readonly RackPair[] => pairs.toSorted((a, b) => Number(a.state !== '') - Number(b.state !== ''))

/** A setup without a name of its own is called by its part. */
const isNamed = ({ title, operation }: SetupRecord): boolean => title !== '' || operation !== ''
const nameOfSetup = (setup: SetupRecord): string => (isNamed(setup) ? [setup.title, setup.operation].filter((text) => text !== '').join(', ') : sayPart(setup.form))

/** Setups of one part: by the part they were opened from, else by their title. */
const partKey = ({ partId, title }: SetupRecord): string | null => partId ?? (title === '' ? null : title)
