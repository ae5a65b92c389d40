import type { NextHeights } from '#engine/rack/coverage/next-heights.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { listOf } from '#words/wording.ts'
import { Link } from '#web/parts/link.tsx'
import { makePath } from '#web/rack/missing/make-path.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly next: readonly NextHeights[]; readonly served: number; readonly setups: number; readonly viseId: string }

const counts = ['', 'One pair', 'Two pairs', 'Three pairs']

/** The heights to own next, and what each lot gains. */
export function NextOnes({ next, served, setups, viseId }: Props) {
  const units = useUnits()
  return (
    <section className="next-ones" aria-label="To make or buy next">
      <h2>To make or buy next</h2>
      {next.length === 0 ? <p>{served === setups ? 'Nothing: every setup is served.' : 'No height alone would serve more: see why below.'}</p> : null}
      <ol>
        {next.map(({ count, heightsMm, rangesMm, gained, status, bound }) => (
          <li key={count} className="next-one">
            <p className="next-heights"><span className="small">{counts[count] ?? `${count} pairs`}</span><strong>{listOf(heightsMm.map((mm) => wordLength(mm, units)))}</strong></p>
            <p>{gained === 1 ? '1 setup more' : `${gained} setups more`}: {served + gained} of {setups}. <span className="small">{sayRanges(rangesMm, units)}{status === 'gap' ? ` At most ${bound} could be gained; whether more than ${gained} can was not found out.` : ''}</span></p>
            <div className="rack-ways">
              {heightsMm.map((mm, at) => <Link key={mm} to={makePath(rangesMm[at]!, mm, viseId)} className="action">Make this pair{heightsMm.length > 1 ? `: ${wordLength(mm, units)}` : ''}</Link>)}
            </div>
          </li>
        ))}
      </ol>
    </section>
  )
}

function sayRanges(ranges: NextHeights['rangesMm'], units: Units): string {
  const said = ranges.map(([low, high]) => (high - low < 0.005 ? `just ${wordLength(low, units)}` : `any from ${wordLength(Math.ceil(low * 1000 - 1e-6) / 1000, units)} to ${wordLength(Math.floor(high * 1000 + 1e-6) / 1000, units)}`))
  return `As good: ${listOf(said)}.`
}
