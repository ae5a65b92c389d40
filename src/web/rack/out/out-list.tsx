import { comeBack } from '#engine/rack/signing.ts'
import { type Holding, whoHasWhat } from '#engine/rack/who-has-what.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { capital } from '#words/wording.ts'
import { Link } from '#web/parts/link.tsx'
import { backsFrom, sayAway } from '#web/rack/out/bring-back.tsx'
import { sign } from '#web/rack/out/sign.ts'
import type { RackBar, RackGroup } from '#web/rack/rack-bars.ts'
import { nameOfBars, trustWords } from '#web/rack/say-bar.ts'
import { sayWhere } from '#web/rack/say-where.ts'
import { today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly groups: readonly RackGroup[]; readonly shop: ShopSnapshot }

/** Who has what now, what is overdue on top; back in one tap. */
export function OutList({ groups, shop }: Props) {
  const holdings = whoHasWhat(shop.bars, today()), overdue = holdings.reduce((sum, holding) => sum + holding.overdue, 0), out = holdings.reduce((sum, { bars }) => sum + bars.length, 0)
  return (
    <div className="side-page">
      <Link to="/rack" className="back">All bars</Link>
      <h1 className="big-line"><strong className="big">{out}</strong> {out === 1 ? 'bar is out' : 'bars are out'}</h1>
      {overdue > 0 ? <p><span className="mark" aria-hidden="true">!</span> {overdue === 1 ? '1 bar is overdue' : `${overdue} bars are overdue`}.</p> : null}
      {out === 0 ? <p>Every bar is in its slot, as far as anybody wrote down.</p> : null}
      {holdings.map((holding) => <OneHolder key={JSON.stringify([holding.where.at, holding.bars[0]?.id])} holding={holding} groups={groups} shop={shop} />)}
    </div>
  )
}

function OneHolder({ holding: { where, bars, overdue }, groups, shop }: Props & { readonly holding: Holding }) {
  const ids = new Set(bars.map(({ id }) => id))
  const together = groups.map((group) => group.bars.filter(({ record }) => ids.has(record.id))).filter((held) => held.length > 0)
  return (
    <section className="out-holder" aria-label={capital(sayWhere(where, shop))}>
      <h2 className="name-text">{capital(sayWhere(where, shop))}<span className="small"> {bars.length === 1 ? '1 bar' : `${bars.length} bars`}{overdue > 0 ? `, ${overdue} overdue` : ''}</span></h2>
      <ul>{together.map((held) => <Held key={held[0]!.record.id} bars={held} />)}</ul>
    </section>
  )
}

function Held({ bars }: { readonly bars: readonly RackBar[] }) {
  const units = useUnits(), [first] = bars as readonly [RackBar], { where } = first.record
  if (where.at === 'slot') return null
  const [{ how, name }] = backsFrom(where) as [ReturnType<typeof backsFrom>[number]], called = nameOfBars(bars, units)
  const late = sayAway(where).endsWith('overdue')
  return (
    <li className="out-row">
      <Link to={`/rack/${first.record.id}`} className="out-what">
        <strong className="name-text">{called}</strong>
        <span className="small">{late ? <span className="mark" aria-hidden="true">! </span> : null}{sayAway(where)} · <span aria-hidden="true">{trustWords[first.trust].mark}</span> {trustWords[first.trust].word}</span>
      </Link>
      <button type="button" className="action" onClick={() => sign(comeBack(bars.map(({ record }) => record), how), `${called}: ${name.toLowerCase()}.`)}>{name}<span className="unseen">: {called}</span></button>
    </li>
  )
}
