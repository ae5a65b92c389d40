import { useMemo, useState } from 'react'
import { labelPages } from '#drafting/rack/labels.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { PickBars } from '#web/inspect/pick/pick-bars.tsx'
import { Choice } from '#web/parts/choice.tsx'
import { Drawing } from '#web/parts/drawing.tsx'
import { Link } from '#web/parts/link.tsx'
import { Paper } from '#web/parts/paper.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { labelOfBar, labelOfSlot } from '#web/rack/print/label-of.ts'
import { type RackGroup, worstTrust } from '#web/rack/rack-bars.ts'
import { useUnits } from '#web/units.ts'
import '#web/styles/inspect-more.css'

type Props = { readonly shop: ShopSnapshot; readonly groups: readonly RackGroup[]; readonly first: string | null }

/** Strips with codes for bars and slots: chosen here, printed on sheets, cut and stuck on the ends and the slots, never on a ground face. */
export function LabelsPage({ shop, groups, first }: Props) {
  const units = useUnits(), here = groups.filter((group) => worstTrust(group) !== 'gone'), all = here.flatMap((group) => group.bars)
  const begun = here.find((group) => group.bars.some(({ record }) => record.id === first))?.bars.map(({ record }) => record.id) ?? []
  const [bars, setBars] = useState<readonly string[]>(begun), [slots, setSlots] = useState<readonly string[]>([]), [paper, setPaper] = useState(shop.shop.paper)
  const pages = useMemo(() => {
    const of = new Map(all.map((bar) => [bar.record.id, bar])), labels = [
      ...bars.flatMap((id) => { const bar = of.get(id); return bar ? [labelOfBar(bar, units)] : [] }),
      ...shop.slots.filter(({ id }) => slots.includes(id)).map((slot) => labelOfSlot(slot, all, units)),
    ]
    return labels.length === 0 ? [] : labelPages({ title: 'Labels', description: `${labels.length} labels with a code each, lines to cut along between them.`, labels }, paper)
  }, [all, bars, slots, shop.slots, units, paper])
  const count = bars.length + slots.length
  return (
    <div className="print-page">
      <div className="print-head no-print">
        <Link to="/rack" className="back">Rack</Link>
        <h1>Labels</h1>
        <button type="button" className="action main" disabled={count === 0} onClick={() => print()}>{count === 0 ? 'Print' : count === 1 ? 'Print 1 label' : `Print ${count} labels`}</button>
      </div>
      <div className="labels-desk">
        <div className="labels-choose no-print">
          <p>Print at full size, cut along the dashes and stick them on an end or on the slot, never on a ground face. Any reader of square codes reads them; the eight letters may be typed into the search of the rack.</p>
          <Choice label="Paper" value={paper} onChange={setPaper} options={[{ value: 'A4', label: 'A4' }, { value: 'Letter', label: 'Letter' }]} />
          {shop.slots.length > 0 ? (
            <details className="sum">
              <summary>Slots: {slots.length} of {shop.slots.length}</summary>
              <div className="sign">
                <div className="rack-ways"><button type="button" className="press" onClick={() => setSlots(slots.length === shop.slots.length ? [] : shop.slots.map(({ id }) => id))}>{slots.length === shop.slots.length ? 'No slot' : 'All slots'}</button></div>
                <Toggles label="Slots" options={shop.slots.map(({ id, name }) => ({ value: id, label: name }))} chosen={slots} onChange={setSlots} />
              </div>
            </details>
          ) : null}
          <details className="sum" open={begun.length === 0}>
            <summary>Bars: {bars.length} of {all.length}</summary>
            <div className="sign">
              <div className="rack-ways"><button type="button" className="press" onClick={() => setBars(bars.length === all.length ? [] : all.map(({ record }) => record.id))}>{bars.length === all.length ? 'No bar' : `All ${all.length} bars`}</button></div>
              <PickBars groups={here} chosen={bars} onChange={setBars} />
            </div>
          </details>
        </div>
        <div className="labels-paper">
          {pages.length === 0 ? <p className="no-print">Nothing is chosen yet.</p> : pages.map((scene, at) => <Paper key={at} size={paper}><Drawing scene={scene} medium="print" /></Paper>)}
        </div>
      </div>
    </div>
  )
}
