import { useMemo, useRef, useState } from 'react'
import { coverageStrip } from '#drafting/rack/coverage-strip.ts'
import { barsFrom } from '#engine/rack/bar-from.ts'
import { coverageSums } from '#engine/rack/coverage/answer-coverage.ts'
import { coverageOf } from '#engine/rack/coverage/coverage.ts'
import { workOfShop } from '#engine/rack/coverage/work-of-shop.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { heightStepMm } from '#web/make/order-for.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { Link } from '#web/parts/link.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { ShowSum } from '#web/parts/show-sum.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { NextOnes } from '#web/rack/missing/next-ones.tsx'
import { NotServed } from '#web/rack/missing/not-served.tsx'
import { sayWork } from '#web/rack/missing/say-work.ts'
import { stripDataOf } from '#web/rack/missing/strip-data.ts'
import { TrySet } from '#web/rack/missing/try-set.tsx'
import { useUnservedKept } from '#web/rack/missing/unserved-kept.ts'
import { useRoom } from '#web/setup/sheet/use-room.ts'
import { today } from '#web/today.ts'
import { useTerms, useUnits } from '#web/units.ts'

type Way = 'stacks' | 'flat'
const most = 3

/** Which heights the shop should own next: where its work finds no bars, and what one, two or three more would serve. */
export function MissingScreen({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), terms = useTerms(), viseWord = terms.vise, kept = useUnservedKept()
  const [viseId, setViseId] = useState(''), [ways, setWays] = useState<readonly Way[]>([])
  const stepMm = heightStepMm(units)
  const bars = useMemo(() => barsFrom({ ...shop, today: today() }, { viseId: null }), [shop])
  const { work, coverage } = useMemo(() => {
    const counted = workOfShop({ vises: shop.vises, setups: shop.setups, unserved: kept ?? [], shop: shop.shop }, {
      viseId: viseId === '' ? null : viseId, stacks: ways.includes('stacks'), flat: ways.includes('flat'), next: { stepMm, lowestMm: stepMm, thicknessMm: null, most },
    })
    return { work: counted, coverage: coverageOf(counted.question, indexRack(bars)) }
  }, [shop, kept, bars, viseId, ways, stepMm])
  const strip = useMemo(() => stripDataOf(work.question, coverage, bars, shop.vises, terms), [work, coverage, bars, shop.vises, terms])
  const vises = shop.vises.filter(({ retired }) => !retired)
  if (vises.length === 0) return <div className="page"><Link to="/rack" className="back">Rack</Link><h1>What is missing</h1><p>Heights are asked for by what stands in a {viseWord}: <Link to="/shop">write one down in Shop</Link> first.</p></div>
  return (
    <div className="page missing">
      <header className="missing-head">
        <Link to="/rack" className="back">Rack</Link>
        <h1 className="big-line"><strong className="big">{coverage.served}</strong> of {coverage.setups} setups served</h1>
        <p className="small">{sayWork(work, kept === null, terms)}</p>
      </header>
      <div className="missing-desk">
        <section className="missing-sheet" aria-label={`Along the jaws of each ${viseWord}`}><Strip data={strip} /></section>
        <div className="missing-side">
          <NextOnes next={coverage.next} served={coverage.served} setups={coverage.setups} shop={shop} />
          <section className="sign" aria-label="How it is counted">
            <SelectField label={viseWord} value={viseId} onChange={setViseId} options={[{ value: '', label: `every ${viseWord}` }, ...vises.map(({ id, name }) => ({ value: id, label: name }))]} />
            <Toggles label="Counted as served too" options={[{ value: 'stacks', label: 'stacked pairs' }, { value: 'flat', label: 'bars lying flat' }]} chosen={ways} onChange={setWays} />
          </section>
          <NotServed work={work} coverage={coverage} shop={shop} />
          <ShowSum sums={coverageSums(coverage)} />
        </div>
      </div>
      <TrySet question={work.question} bars={bars} shop={shop} />
    </div>
  )
}

function Strip({ data }: { readonly data: ReturnType<typeof stripDataOf> }) {
  const frame = useRef<HTMLDivElement>(null), widthMm = useRoom(frame)?.widthMm ?? 0, units = useUnits()
  const scene = useMemo(() => (widthMm < 40 ? null : coverageStrip(data, { widthMm, units })), [data, widthMm, units])
  return <div ref={frame}>{scene ? <Drawing scene={scene} /> : null}</div>
}
