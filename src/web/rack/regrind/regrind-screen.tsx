import { useMemo, useState } from 'react'
import { barsFrom } from '#engine/rack/bar-from.ts'
import { type RegrindOfShop, regrindOfShop, type RegrindWish } from '#engine/rack/regrind/regrind-of-shop.ts'
import { lowFrom, usualRegrind } from '#engine/rack/regrind/regrind-typed.ts'
import { workOfShop } from '#engine/rack/coverage/work-of-shop.ts'
import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { PickBars } from '#web/inspect/pick/pick-bars.tsx'
import { Link } from '#web/parts/link.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { type RackBar, type RackGroup, worstTrust } from '#web/rack/rack-bars.ts'
import { RegrindFields, readWish } from '#web/rack/regrind/regrind-fields.tsx'
import { MakeRegrind } from '#web/rack/regrind/make-regrind.tsx'
import { RegrindAnswer } from '#web/rack/regrind/regrind-answer.tsx'
import { nameAmong } from '#web/rack/say-bar.ts'
import { today } from '#web/today.ts'
import { useTerms, useUnits } from '#web/units.ts'
import '#web/styles/inspect-more.css'

type Props = { readonly shop: ShopSnapshot; readonly groups: readonly RackGroup[]; readonly first: string | null }

/** Worn bars to one new height: out of their last profiles, what comes off each, in how many passes, and what they will serve then. */
export function RegrindScreen({ shop, groups, first }: Props) {
  const units = useUnits(), { vise } = useTerms(), here = groups.filter((group) => worstTrust(group) !== 'gone'), of = new Map(here.flatMap((group) => group.bars).map((bar) => [bar.record.id, bar]))
  const [ids, setIds] = useState<readonly string[]>(() => here.find((group) => group.bars.some(({ record }) => record.id === first))?.bars.map(({ record }) => record.id) ?? [])
  const [typed, setTyped] = useState(usualRegrind), [low, setLow] = useState<{ readonly [bar: string]: string }>({})
  const bars = ids.flatMap((id) => of.get(id) ?? []), read = readWish(typed), wish = 'wish' in read ? read.wish : null
  const answer = useAnswer(shop, ids, wish, low)
  return (
    <div className="page missing">
      <header className="missing-head">
        <Link to={first === null ? '/rack' : `/rack/${first}`} className="back">{first === null ? 'Rack' : 'Bar'}</Link>
        <h1>Regrind</h1>
      </header>
      <div className="missing-desk">
        <div className="missing-side">
          {bars.length === 0 ? <p>Choose the bars that are to come to one height.</p> : answer instanceof Refusal ? <p className="status--danger" role="alert">{sayAbout(answer, bars, units)}</p>
            : answer ? <RegrindAnswer answer={answer} bars={bars} left={leftOut(bars, here, units)} job={<MakeRegrind shop={shop} bars={bars} typed={typed} low={low} sayAbout={(refusal) => sayAbout(refusal, bars, units)} />} /> : null}
          <details className="sum" open={bars.length === 0}>
            <summary>{bars.length === 0 ? 'Choose bars' : 'Other bars'}</summary>
            <PickBars groups={here} chosen={ids} onChange={setIds} />
          </details>
        </div>
        <div className="missing-side">
          <RegrindFields typed={typed} onChange={setTyped} wrong={'wrong' in read ? read.wrong : {}} />
          {bars.length > 0 ? (
            <details className="sum">
              <summary>One lower than the others</summary>
              <p className="small">For a {vise} whose bed stands higher: how much lower this bar is to come out.</p>
              <div className="field-list">{bars.map((bar) => <NumberField key={bar.record.id} label="µm lower" more={`: ${nameAmong(bar, bars, units)}`} note={nameAmong(bar, bars, units)} value={low[bar.record.id] ?? ''} ifEmpty="0" onChange={(text) => setLow({ ...low, [bar.record.id]: text })} />)}</div>
            </details>
          ) : null}
        </div>
      </div>
    </div>
  )
}

/** Null: nothing to answer yet. */
function useAnswer(shop: ShopSnapshot, ids: readonly string[], wish: Omit<RegrindWish, 'lowUm'> | null, low: { readonly [bar: string]: string }): RegrindOfShop | Refusal | null {
  const facts = useMemo(() => ({
    bars: barsFrom({ ...shop, today: today() }, { viseId: null }),
    work: workOfShop({ vises: shop.vises, setups: shop.setups, unserved: [], shop: shop.shop }, { viseId: null, stacks: false, flat: false, next: { stepMm: 0.5, lowestMm: 0.5, thicknessMm: null, most: 0 } }).question,
  }), [shop])
  const asked = JSON.stringify([ids, wish, low])
  return useMemo(() => {
    if (ids.length === 0 || wish === null) return null
    return attempt(() => regrindOfShop(ids, facts.bars, facts.work, { ...wish, lowUm: lowFrom(Object.fromEntries(ids.map((id) => [id, low[id] ?? '']))) }))
    // oxlint-disable-next-line react/exhaustive-deps -- `asked` holds ids, wish and low by what is in them
  }, [facts, asked])
}

/** Mates of the chosen bars that are not chosen, by name. */
const leftOut = (bars: readonly RackBar[], groups: readonly RackGroup[], units: Units): readonly string[] =>
  groups.filter((group) => group.bars.length > 1 && group.bars.some((bar) => bars.includes(bar))).flatMap((group) => group.bars.flatMap((bar) => (bars.includes(bar) ? [] : [nameAmong(bar, group.bars, units)])))

/** `bars[1]` is said by the name people use. */
function sayAbout(refusal: Refusal, bars: readonly RackBar[], units: ReturnType<typeof useUnits>): string {
  const { field } = refusal.facts, place = typeof field === 'string' ? /^bars\[(\d+)\]$/.exec(field) : null, bar = place ? bars[Number(place[1])] : undefined
  return `${bar ? `${nameAmong(bar, bars, units)}: ` : ''}${sayRefusal(refusal, units)}`
}
