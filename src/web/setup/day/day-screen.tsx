import { useMemo, useState } from 'react'
import type { SetupRecord } from '#model/setup-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { SelectField } from '#web/parts/select-field.tsx'
import { BesidePage } from '#web/setup/beside/beside-page.tsx'
import { Cautions } from '#web/setup/beside/cautions.tsx'
import { rackHere, type RackPair } from '#web/setup/beside/rack-here.ts'
import { DayAnswer } from '#web/setup/day/day-answer.tsx'
import { dayList } from '#web/setup/day/day-list.ts'
import { isNamed, nameOfSetup, viseOf } from '#web/setup/day/say-saved.ts'
import { sayPart } from '#web/setup/saved/say-setup.ts'
import { dayOf, sayDay, today } from '#web/today.ts'
import { useTerms, useUnits } from '#web/units.ts'

const mostListed = 60

/** What to take out of the rack for the setups of a day, or for all operations of one part. */
export function DayScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), pairs = useMemo(() => trustedFirst(rackHere(shop, units).pairs), [shop, units])
  const all = useMemo(() => shop.setups.filter(({ retired }) => !retired).toSorted((a, b) => (a.usedAtIso < b.usedAtIso ? 1 : -1)).slice(0, mostListed), [shop.setups])
  const ofToday = all.filter(({ usedAtIso }) => dayOf(usedAtIso) === today()).map(({ id }) => id)
  const [chosen, setChosen] = useState<readonly string[]>(() => ofToday.toReversed()), [part, setPart] = useState('')
  const setups = useMemo(() => chosen.flatMap((id) => all.find((setup) => setup.id === id) ?? []), [chosen, all])
  const day = useMemo(() => dayList(shop, setups, pairs), [shop, setups, pairs]), parts = partsOf(all, shop)
  const takePart = (key: string) => { setPart(key); if (key !== '') setChosen(all.filter((setup) => partKey(setup) === key).map(({ id }) => id).toReversed()) }
  const toggle = (id: string) => { setPart(''); setChosen(chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id]) }
  const pulled = setups.length === 0 ? <p className="small">Choose setups: what to take out of the rack stands here.</p> : <DayAnswer shop={shop} pairs={pairs} day={day} />
  return (
    <BesidePage title="Pull list" typedFirst sheet={pulled}>
      <p>All operations of a part, or the setups of today: one pair for all of them where one does, else the fewest changes. They are run in the order in which you touch them.</p>
      {parts.length === 0 ? null : <SelectField label="all operations of" value={part} onChange={takePart} options={[{ value: '', label: 'choose a part' }, ...parts.map(([value, label]) => ({ value, label }))]} />}
      {all.length === 0 ? <p>No setup was kept yet. Keep one on Set up by <em>Use this pair</em> or <em>Save</em>.</p> : null}
      <ul aria-label="Setups">
        {all.map((setup) => <SetupRow key={setup.id} shop={shop} setup={setup} at={chosen.indexOf(setup.id)} onTouch={() => toggle(setup.id)} />)}
      </ul>
      <Cautions situations={['look first']} />
    </BesidePage>
  )
}

type Row = { readonly shop: ShopSnapshot; readonly setup: SetupRecord; readonly at: number; readonly onTouch: () => void }

/** A setup that can be taken into the list; `at`: its place in the order, −1 while it is not in it. */
function SetupRow({ shop, setup, at, onTouch }: Row) {
  const terms = useTerms(), day = dayOf(setup.usedAtIso) === today() ? 'today' : sayDay(setup.usedAtIso).replaceAll(' ', '\u00a0')
  const about = [viseOf(shop, setup)?.name ?? terms.vise, ...(isNamed(setup) ? [sayPart(setup.form)] : []), day]
  return (
    <li>
      <button type="button" className="setup-row setup-row--last" aria-pressed={at >= 0} onClick={onTouch}>
        <strong className="name-text">{at >= 0 ? `${at + 1}. ` : ''}{nameOfSetup(setup)}</strong>
        <span className="name-text">{about.join(' · ')}</span>
      </button>
    </li>
  )
}

/** The order in which pairs are liked: trusted before others, then the lowest. */
const trustedFirst = (pairs: readonly RackPair[]): readonly RackPair[] => pairs.toSorted((a, b) => Number(a.state !== '') - Number(b.state !== ''))

/** Setups of one part: by the part they were opened from, else by their title. */
const partKey = ({ partId, title }: SetupRecord): string | null => partId ?? (title === '' ? null : title)

/** Every part of the setups once, by its key and what it is called. */
function partsOf(setups: readonly SetupRecord[], { parts }: ShopSnapshot): readonly (readonly [key: string, name: string])[] {
  return [...new Map(setups.flatMap((setup) => {
    const key = partKey(setup), part = parts.find(({ id }) => id === setup.partId)
    return key === null ? [] : [[key, part?.name ?? setup.title] as const]
  }))]
}
