import { useMemo, useRef, useState } from 'react'
import { heightOverYears } from '#drafting/rack/height-over-years.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { Link } from '#web/parts/link.tsx'
import { lifeOf, yearsOf } from '#web/rack/life/life-of.ts'
import { type Histories, useHistories } from '#web/rack/life/use-histories.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { nameAmong, nameOfBar } from '#web/rack/say-bar.ts'
import { sayCheck } from '#web/rack/say-check.ts'
import { useRoom } from '#web/setup/sheet/use-room.ts'
import { sayDay } from '#web/today.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly bars: readonly RackBar[]; readonly shop: ShopSnapshot }

/** The life of a bar, or of a pair as one, latest first; asked of the shop when it is opened. */
export function BarHistory(props: Props) {
  const [open, setOpen] = useState(false)
  return (
    <details className="sum" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>History</summary>
      {open ? <Asked {...props} /> : null}
    </details>
  )
}

function Asked({ bars, shop }: Props) {
  const histories = useHistories(bars, shop)
  if (histories === 'asking') return <output>Asking the shop</output>
  if (histories === 'away') return <p>The history is kept by the shop’s server, which does not answer just now.</p>
  return <Life bars={bars} shop={shop} histories={histories} />
}

function Life({ bars, shop, histories }: Props & { readonly histories: Histories }) {
  const units = useUnits(), lines = useMemo(() => lifeOf(bars, histories, shop), [bars, histories, shop]), [first] = bars
  const checkAt = (atIso: string) => [...histories.values()].flat().find((entry) => entry.what === 'check' && entry.atIso === atIso && entry.check.method !== 'stated')
  return (
    <div className="life">
      {bars.length === 1 ? <Years bar={first!} histories={histories} /> : null}
      <p><Link to={`/rack/${first!.record.id}/${bars.length > 1 ? 'lives' : 'life'}`}>On one page, to print</Link></p>
      <ol className="rows">
        {lines.toReversed().map(({ atIso, person, bars: of, says }, at) => {
          const said = sayFinding(says, units), check = says.code === 'life-checked' ? checkAt(atIso) : undefined
          return (
            <li key={at} className="name-text">
              <span className="small">{sayDay(atIso)} · {person || '–'}{of.length < bars.length ? ` · ${bars.filter(({ record }) => of.includes(record.id)).map((bar) => nameAmong(bar, bars, units)).join(', ')}` : ''}</span><br />
              {check?.what === 'check' ? <><Link to={`/inspect/done/${check.id}`}>{said}</Link><br /><span className="small">{sayCheck(check.check, of[0]!, units)}</span></> : said}
            </li>
          )
        })}
      </ol>
    </div>
  )
}

const chartMm = 52

function Years({ bar, histories }: { readonly bar: RackBar; readonly histories: Histories }) {
  const frame = useRef<HTMLDivElement>(null), widthMm = useRoom(frame)?.widthMm ?? 0, units = useUnits()
  const scene = useMemo(() => {
    const years = widthMm < 40 ? null : yearsOf(bar, histories)
    return years && heightOverYears({ ...years, title: `${nameOfBar(bar, units)} over the years`, description: `${years.heights.length} heights from ${years.heights[0]!.day} to ${years.heights.at(-1)!.day}, in µm against the latest; the lines below say the same in words.` }, { widthMm, heightMm: chartMm, units })
  }, [bar, histories, widthMm, units])
  return <div ref={frame}>{scene ? <Drawing scene={scene} /> : null}</div>
}
