import { comeBack } from '#engine/rack/signing.ts'
import { isOverdue } from '#engine/rack/who-has-what.ts'
import type { Where } from '#model/bar-record.ts'
import type { CameBack } from '#model/came-back.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { capital } from '#words/wording.ts'
import { sign } from '#web/rack/out/sign.ts'
import { TakeOut } from '#web/rack/out/take-out.tsx'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { nameOfBars } from '#web/rack/say-bar.ts'
import { sayWhere } from '#web/rack/say-where.ts'
import { sayDay, today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'

type Away = Exclude<Where, { at: 'slot' }>
type Props = { readonly bars: readonly RackBar[]; readonly where: Away; readonly shop: ShopSnapshot }

/** Back into the slot in one tap, which says how it came back. */
export function BringBack({ bars, where, shop }: Props) {
  const units = useUnits()
  const back = (how: CameBack, name: string) => sign(comeBack(bars.map(({ record }) => record), how), `${nameOfBars(bars, units)}: ${name}.`)
  return (
    <>
      <h2 className="name-text">{capital(sayWhere(where, shop))}</h2>
      <p className="small">{sayAway(where)}</p>
      <div className="bar-actions">
        {backsFrom(where).map(({ how, name }, at) => <button key={how} type="button" className={at === 0 ? 'action main' : 'action'} onClick={() => back(how, name.toLowerCase())}>{name}</button>)}
      </div>
      <details className="sum"><summary>Hand {bars.length === 1 ? 'it' : 'them'} on</summary><TakeOut bars={bars} shop={shop} /></details>
    </>
  )
}

/** What can be said of a return. From our own vise or machine nobody has to look. */
export function backsFrom(where: Away): readonly { readonly how: CameBack; readonly name: string }[] {
  const own = where.at === 'vise' || where.to === 'machine'
  return [
    own ? { how: 'not looked at', name: 'Back in its slot' } : { how: 'fine', name: 'Back, fine' },
    { how: 'nicked', name: 'Back, nicked' }, { how: 'drilled', name: 'Back, drilled' },
    ...(own ? [] : [{ how: 'not looked at' as const, name: 'Back, not looked at' }]),
  ]
}

/** `since 12 Mar 2026, due back 14 Mar 2026: overdue`. */
export function sayAway({ sinceIso, dueOn }: Pick<Away, 'sinceIso' | 'dueOn'>): string {
  const since = sinceIso === undefined ? 'nobody wrote down since when' : `since ${sayDay(sinceIso)}`
  return dueOn === undefined ? since : `${since}, due back ${sayDay(dueOn)}${isOverdue({ at: 'out', who: '-', dueOn }, today()) ? ': overdue' : ''}`
}
