import type { NextHeights } from '#engine/rack/coverage/next-heights.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { listOf } from '#words/wording.ts'
import { beginJob, newOrder } from '#web/make/job-edits.ts'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly next: readonly NextHeights[]; readonly served: number; readonly setups: number; readonly shop: ShopSnapshot }

const counts = ['', 'One pair', 'Two pairs', 'Three pairs']

/** The heights to own next, and what each lot gains. */
export function NextOnes({ next, served, setups, shop }: Props) {
  const units = useUnits()
  const makeThem = (heightsMm: NextHeights['heightsMm'], rangesMm: NextHeights['rangesMm']) => {
    const order = newOrder(shop, { heights: heightsMm.map((mm) => wordLength(mm, units, { fractions: false })).join(' ') })
    go(`/make/order/${beginJob({ ...order, name: nameOfOrder(heightsMm, rangesMm, units), note: sayRanges(rangesMm, units) })}`)
  }
  return (
    <section className="next-ones" aria-label="To make or buy next">
      <h2>To make or buy next</h2>
      {next.length === 0 ? <p>{served === setups ? 'Nothing: every setup is served.' : 'No height alone would serve more: see why below.'}</p> : null}
      <ol>
        {next.map(({ count, heightsMm, rangesMm, gained, status, bound }) => (
          <li key={count} className="next-one">
            <p className="next-heights"><span className="small">{counts[count] ?? `${count} pairs`}</span><strong>{listOf(heightsMm.map((mm) => wordLength(mm, units)))}</strong></p>
            <p>{gained === 1 ? '1 setup more' : `${gained} setups more`}: {served + gained} of {setups}. <span className="small">{sayRanges(rangesMm, units)}{status === 'gap' ? ` At most ${bound} could be gained; whether more than ${gained} can was not found out.` : ''}</span></p>
            <div className="rack-ways"><button type="button" className="action" onClick={() => makeThem(heightsMm, rangesMm)}>{count === 1 ? 'Make this pair' : `Make these ${count} pairs`}</button></div>
          </li>
        ))}
      </ol>
    </section>
  )
}

const mostLetters = 80

/** `32 (32 to 32.4), 38 (38 to 38.4)`: what the order is for stays with it. */
function nameOfOrder(heightsMm: readonly number[], ranges: NextHeights['rangesMm'], units: Units): string {
  const say = (mm: number) => wordLength(mm, units)
  return heightsMm.map((mm, at) => `${say(mm)} (${say(ranges[at]![0])} to ${say(ranges[at]![1])})`).join(units.decimalMark === ',' ? '; ' : ', ').slice(0, mostLetters)
}

function sayRanges(ranges: NextHeights['rangesMm'], units: Units): string {
  const said = ranges.map(([low, high]) => (high - low < 0.005 ? `just ${wordLength(low, units)}` : `any from ${wordLength(Math.ceil(low * 1000 - 1e-6) / 1000, units)} to ${wordLength(Math.floor(high * 1000 + 1e-6) / 1000, units)}`))
  return `As good: ${listOf(said)}.`
}
