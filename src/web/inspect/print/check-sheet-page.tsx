import { useMemo } from 'react'
import { checkSheetPages } from '#drafting/inspect/check-sheet.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { barNamer } from '#web/inspect/bar-names.ts'
import { useInspectFacts } from '#web/inspect/facts.ts'
import { checkSheetFrom } from '#web/inspect/print/check-sheet-data.ts'
import { NothingToPrint, PrintFrame } from '#web/parts/print-frame.tsx'
import { today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

/**
 * A half-done check as a sheet to fill in by pencil, its boxes in the order in which they are typed in later.
 *
 * There is no check yet: what is printed is kept as told about the half-done one.
 */
export function CheckSheetPage({ shop, draftId }: { readonly shop: ShopSnapshot; readonly draftId: string }) {
  const units = useUnits(), facts = useInspectFacts(shop), draft = shop.drafts.find(({ id }) => id === draftId), day = today()
  const data = useMemo(() => draft && checkSheetFrom({
    draft, shop, facts, units, day, nameOf: barNamer(draft.form.bars.map(({ bar }) => bar), shop, facts, units, draft.form.bars),
  }), [draft, shop, facts, units, day])
  useTold({ draftId }, 'check sheet', data ?? null)
  if (!data) return <NothingToPrint why="There is no such half-done check" back={{ to: '/inspect', name: 'Inspect' }} />
  const { paper } = shop.shop
  return <PrintFrame title="Check sheet" back={{ to: `/inspect/check/${draftId}`, name: 'Check' }} size={paper} pages={checkSheetPages(data, paper)} />
}
