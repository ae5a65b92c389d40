import { useMemo, useRef, useState } from 'react'
import { flushSync } from 'react-dom'
import { gatherDraft } from '#engine/inspect/gather-draft.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { BoxBar } from '#web/inspect/box/box-bar.tsx'
import { takeNextBar } from '#web/inspect/box/box-edits.ts'
import { BoxList } from '#web/inspect/box/box-list.tsx'
import { BoxSorted } from '#web/inspect/box/box-sorted.tsx'
import { dropDraft } from '#web/inspect/draft/draft-edits.ts'
import { useInspectFacts } from '#web/inspect/facts.ts'
import { MicrometerField } from '#web/inspect/draft/micrometer-field.tsx'
import { Link } from '#web/parts/link.tsx'
import { go } from '#web/router.ts'

/** The bar in hand, and the ones before it; then what they are good for. */
export function BoxEntry({ shop, draft }: { readonly shop: ShopSnapshot; readonly draft: DraftRecord }) {
  const facts = useInspectFacts(shop), { form: { bars } } = draft, entry = useRef<HTMLDivElement>(null)
  const read = useMemo(() => gatherDraft(draft, facts), [draft, facts])
  const [chosen, setChosen] = useState<string | null>(null), [sorted, setSorted] = useState(false)
  const now = bars.find(({ bar }) => bar === chosen) ?? bars.at(-1)!
  const next = () => {
    // At once: a gauge that types like a keyboard goes on within milliseconds.
    flushSync(() => setChosen(takeNextBar(draft)))
    entry.current?.querySelector('input')?.focus()
  }
  if (sorted) return <BoxSorted shop={shop} draft={draft} onBack={() => setSorted(false)} />
  return (
    <div className="page box">
      <Link to="/inspect" className="back">Inspect</Link>
      <div className="box-desk">
        <div ref={entry}>
          <BoxBar key={now.bar} draft={draft} bar={now} cells={read.cells.filter(({ cell }) => cell.bar === now.bar)} wrong={read.wrong} at={bars.indexOf(now)} onNext={next} onLeave={() => setChosen(null)} />
        </div>
        <section className="box-side" aria-label="Bars so far">
          <BoxList draft={draft} read={read} chosen={now.bar} onChoose={setChosen} />
          <MicrometerField draft={draft} instruments={shop.instruments} />
          <div className="actions"><button type="button" className="action" onClick={() => { dropDraft(draft.id, 'Box of used bars'); go('/inspect') }}>Drop this box</button></div>
        </section>
      </div>
      <div className="foot-actions">
        <button type="button" className="action main" onClick={next}>Next bar</button>
        <button type="button" className="action" onClick={() => setSorted(true)}>Sort the box</button>
      </div>
    </div>
  )
}
