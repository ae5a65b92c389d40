import type { ShopSnapshot } from '#model/snapshot.ts'
import { listOf } from '#words/wording.ts'
import { newId, nowIso } from '#web/new-id.ts'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { keepRow, lockRow } from '#web/setup/row/lock-row.ts'
import type { RowAtHand } from '#web/setup/row/use-row.ts'
import { useTerms } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

type Props = { readonly shop: ShopSnapshot; readonly row: RowAtHand; readonly isReady: boolean; readonly onPrint: (setupId: string | null) => void }

/** What the row is for: pairs and vises locked together, and its sheet. */
export function RowActions({ shop, row: { lines, chosen, title }, isReady, onPrint }: Props) {
  const terms = useTerms(), places = lines.map(({ vise, pair }) => ({ viseId: vise.id, bars: pair.bars.map(({ id }) => id) }))
  const decided = (decide: typeof lockRow) => chosen && decide(shop, { state: chosen.state, places, atIso: nowIso(), newId })
  const lock = () => {
    const locked = decided(lockRow)
    if (locked === null) return
    writeDeed({ edits: locked.edits })
    offerUndo(`${listOf(lines.map(({ vise, label }) => `${label} in ${vise.name}`))}: locked together.`, () => { writeDeed({ edits: locked.undo }) })
  }
  const print = () => {
    const kept = decided(keepRow)
    if (kept === null) return
    writeDeed({ edits: kept.edits })
    onPrint(kept.setupIds[0] ?? null)
  }
  return (
    <div className="actions">
      <button type="button" className="action main" disabled={!isReady} onClick={lock}>Lock pairs and {terms.vise}s</button>
      <button type="button" className="action" disabled={!isReady || title === null} onClick={print}>Print row sheet</button>
    </div>
  )
}
