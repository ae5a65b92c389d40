import { useMemo, useState } from 'react'
import { readOrFinding } from '#engine/inspect/read-or-finding.ts'
import { gatherDraft } from '#engine/inspect/gather-draft.ts'
import { checkFromDraft } from '#engine/inspect/read-draft.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { Finding } from '#model/finding.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { barNamer } from '#web/inspect/bar-names.ts'
import { dropDraft } from '#web/inspect/draft/draft-edits.ts'
import { MicrometerField } from '#web/inspect/draft/micrometer-field.tsx'
import { useInspectFacts } from '#web/inspect/facts.ts'
import { QuickBar } from '#web/inspect/quick/quick-bar.tsx'
import { newId } from '#web/new-id.ts'
import { Link } from '#web/parts/link.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

/** All of a quick look on one page, bar by bar, every touch and key kept at once. */
export function QuickPage({ shop, draft }: { readonly shop: ShopSnapshot; readonly draft: DraftRecord }) {
  const units = useUnits(), facts = useInspectFacts(shop), { form } = draft, ids = form.bars.map(({ bar }) => bar)
  const read = useMemo(() => gatherDraft(draft, facts), [draft, facts]), nameOf = useMemo(() => barNamer(form.bars.map(({ bar }) => bar), shop, facts, units), [form.bars, shop, facts, units])
  const [refused, setRefused] = useState<Finding | null>(null)
  const keep = () => {
    const [body, said] = readOrFinding(() => checkFromDraft(draft, facts)), id = newId()
    setRefused(said)
    if (body === null) return
    writeDeed({ checks: [{ ...body, id }], edits: [{ kind: 'draft', record: draft.id, fields: { state: 'kept', checkId: id } }] })
    go(`/inspect/done/${id}`, { replace: true })
  }
  return (
    <div className="page quick">
      <Link to="/inspect" className="back">Inspect</Link>
      <h1>Quick look</h1>
      <p>For milling and drilling. <strong>Fine milling and grinding need a check on the plate</strong>, with both ends and the middle.</p>
      <div className="quick-bars">{ids.map((bar) => <QuickBar key={bar} draft={draft} bar={bar} name={nameOf(bar)} slot={slotOf(bar, shop)} cells={read.cells.filter(({ cell }) => cell.bar === bar)} />)}</div>
      <MicrometerField draft={draft} instruments={shop.instruments} />
      <div className="foot-actions">
        {refused ? <StatusLine danger>{sayRefusal(refused, units, nameOf)}</StatusLine> : null}
        <button type="button" className="action main" onClick={keep}>Keep this look</button>
        <button type="button" className="action" onClick={() => { dropDraft(draft.id, 'Quick look'); go('/inspect') }}>Drop it</button>
      </div>
    </div>
  )
}

function slotOf(bar: string, { bars, slots }: ShopSnapshot): string | null {
  const slotId = bars.find(({ id }) => id === bar)?.slotId
  return slots.find(({ id }) => id === slotId)?.name ?? null
}
