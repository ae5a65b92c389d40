import type { NextHeights } from '#engine/rack/coverage/next-heights.ts'
import { wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { listOf } from '#words/wording.ts'
import { beginJob } from '#web/make/job-edits.ts'
import { type HeightFor, orderFor, sayAsGood } from '#web/make/order-for.ts'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly next: readonly NextHeights[]; readonly served: number; readonly setups: number; readonly shop: ShopSnapshot }

const counts = ['', 'One pair', 'Two pairs', 'Three pairs']

/** The heights to own next, and what each lot gains. */
export function NextOnes({ next, served, setups, shop }: Props) {
  return (
    <section className="next-ones" aria-label="To make or buy next">
      <h2>To make or buy next</h2>
      {next.length === 0 ? <p>{served === setups ? 'Nothing: every setup is served.' : 'No height alone would serve more: see why below.'}</p> : null}
      <ol>
        {next.map((lot) => <Lot key={lot.count} lot={lot} served={served} setups={setups} shop={shop} />)}
      </ol>
    </section>
  )
}

function Lot({ lot: { count, heightsMm, rangesMm, gained, status, bound }, served, setups, shop }: Omit<Props, 'next'> & { readonly lot: NextHeights }) {
  const units = useUnits(), heights = heightsMm.map((heightMm, at): HeightFor => ({ heightMm, lowMm: rangesMm[at]![0], highMm: rangesMm[at]![1] }))
  return (
    <li className="next-one">
      <p className="next-heights"><span className="small">{counts[count] ?? `${count} pairs`}</span><strong>{listOf(heightsMm.map((mm) => wordLength(mm, units)))}</strong></p>
      <p>{gained === 1 ? '1 setup more' : `${gained} setups more`}: {served + gained} of {setups}. <span className="small">{sayAsGood(heights, units)}{status === 'gap' ? ` At most ${bound} could be gained; whether more than ${gained} can was not found out.` : ''}</span></p>
      <div className="rack-ways"><button type="button" className="action" onClick={() => go(`/make/order/${beginJob(orderFor(shop, heights, units))}`)}>{count === 1 ? 'Make this pair' : `Make these ${count} pairs`}</button></div>
    </li>
  )
}
