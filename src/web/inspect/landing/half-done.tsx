import { useEffect, useState } from 'react'
import { cellsOf } from '#engine/inspect/cells.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { HistoryEntry } from '#model/history.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { ask } from '#web/api.ts'
import { barNamer } from '#web/inspect/bar-names.ts'
import { dropDraft } from '#web/inspect/draft/draft-edits.ts'
import { draftKind, draftPath } from '#web/inspect/draft/draft-path.ts'
import { sayMethod, sayTime } from '#web/inspect/say-check.ts'
import { Link } from '#web/parts/link.tsx'
import { useUnits } from '#web/units.ts'

type Props = { readonly drafts: readonly DraftRecord[]; readonly shop: ShopSnapshot; readonly facts: InspectFacts }

/** Checks that wait for somebody to go on, whoever began them. */
export function HalfDone({ drafts, ...known }: Props) {
  return (
    <section aria-labelledby="half-done">
      <h2 id="half-done">Half done</h2>
      <ul>{drafts.map((draft) => <HalfDoneRow key={draft.id} draft={draft} {...known} />)}</ul>
    </section>
  )
}

function HalfDoneRow({ draft, shop, facts }: Omit<Props, 'drafts'> & { readonly draft: DraftRecord }) {
  const units = useUnits(), last = useLast(draft), { form, typed } = draft
  const ids = form.bars.map(({ bar }) => bar), nameOf = barNamer(ids, shop, facts, units, form.bars), cells = cellsOf(form)
  const kind = draftKind(form), method = kind === 'box' ? 'box of used bars' : kind === 'quick' ? 'quick look' : sayMethod(form.method)
  const done = cells.filter(({ key }) => (typed[key] ?? '') !== '').length
  const said = [method, ...(cells.length > 0 ? [`${done} of ${cells.length} readings`] : []), ...(last ? [`${last.person === '' ? '' : `${last.person}, `}${sayTime(last.atIso)}`] : [])].join(' · ')
  const bars = ids.length > 3 ? `${ids.length} bars` : ids.map(nameOf).join(', ') || 'no bar yet'
  return (
    <li className="insp-row">
      <Link to={draftPath(draft)} className="insp-row-go">
        <span className="rack-what"><strong className="name-text">{bars}</strong><span className="small">{said}</span></span>
        <span className="insp-row-act">Go on</span>
      </Link>
      <button type="button" className="press" aria-label={`Drop the half-done check of ${bars}`} onClick={() => dropDraft(draft.id, bars)}>Drop</button>
    </li>
  )
}

/** Who typed into it last, and when; the shop’s server knows, and without it nothing is said. */
function useLast({ id, saw }: DraftRecord): Pick<HistoryEntry, 'person' | 'atIso'> | null {
  const [last, setLast] = useState<Pick<HistoryEntry, 'person' | 'atIso'> | null>(null), seen = JSON.stringify(saw)
  useEffect(() => {
    let wanted = true
    ask<readonly HistoryEntry[]>(`/api/history/draft/${id}`).then((history) => { if (wanted) setLast(history.at(-1) ?? null) }, () => { /* Away: the row stands without it. */ })
    return () => { wanted = false }
  }, [id, seen])
  return last
}
