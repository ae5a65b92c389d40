import type { ShopSnapshot } from '#model/snapshot.ts'
import { beginBox } from '#web/inspect/box/box-edits.ts'
import { BoxEntry } from '#web/inspect/box/box-entry.tsx'
import { Link } from '#web/parts/link.tsx'
import { go } from '#web/router.ts'
import { AskPerson } from '#web/shell/ask-person.tsx'
import { useUnits } from '#web/units.ts'
import '#web/styles/inspect-more.css'

/** A box of used bars nobody knows: measured and looked at one after another, then sorted. */
export function BoxScreen({ shop, id }: { readonly shop: ShopSnapshot; readonly id: string | undefined }) {
  const draft = shop.drafts.find((one) => one.id === id)
  if (id === undefined) return <Begin shop={shop} />
  if (draft === undefined) return <div className="page"><h1>This box is finished</h1><p>It was kept or dropped, here or on another device. <Link to="/inspect">See Inspect</Link></p></div>
  return <BoxEntry key={id} shop={shop} draft={draft} />
}

function Begin({ shop }: { readonly shop: ShopSnapshot }) {
  const { length } = useUnits()
  return (
    <>
      <AskPerson />
      <div className="page">
        <Link to="/inspect" className="back">Inspect</Link>
        <h1>A box of used bars</h1>
        <ol className="steps">
          <li>Wipe each bar, chalk a number on it, measure its height at both ends and in the middle, and look at it: bent, nicked, drilled, magnetised. Thickness and length go on from bar to bar.</li>
          <li>Out come pairs, bars to drill into, bars worth grinding again, and scrap, each with the reason.</li>
          <li>What belongs together is marked before the box is emptied. The readings are kept as found.</li>
        </ol>
        <div className="actions"><button type="button" className="action main" onClick={() => go(`/inspect/box/${beginBox(length, shop)}`, { replace: true })}>Take the first bar</button></div>
      </div>
    </>
  )
}
