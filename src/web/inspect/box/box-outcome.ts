import { checkFromDraft } from '#engine/inspect/read-draft.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import { type SizedBoxBar, sortBySize } from '#engine/inspect/sort-by-size.ts'
import type { SortedBox } from '#engine/inspect/used-box.ts'
import type { Check } from '#model/check.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import { readSizeMm } from '#model/length.ts'
import type { ShopFields } from '#model/shop-record.ts'

/** What a box comes to: the check as found, the bars with their sizes, and the lots they fall into. */
export type BoxOutcome = { readonly body: Omit<Check, 'id' | 'person' | 'device' | 'atIso'>; readonly bars: readonly SizedBoxBar[]; readonly sorted: SortedBox }

/** @throws Refusal as `checkFromDraft`, and of a thickness or length that cannot be read, field `bars[2].thicknessMm` */
export function boxOutcome(draft: DraftRecord, facts: InspectFacts): BoxOutcome {
  const body = checkFromDraft(draft, facts), { unit, bars: given } = draft.form
  const bars = given.map(({ bar, thickness, length }, at): SizedBoxBar => ({
    id: bar, thicknessMm: readSizeMm(thickness, unit, `bars[${at}].thicknessMm`), lengthMm: readSizeMm(length, unit, `bars[${at}].lengthMm`),
    heightsMm: body.readings.filter((reading) => reading.bar === bar).map(({ heightMm }) => heightMm),
    seen: draft.looks[bar]?.seen ?? [], rock: draft.looks[bar]?.rock ?? 'not tried',
  }))
  return { body, bars, sorted: sortBySize(bars, limitsOf(facts.limitsUm), body.took?.readWith ?? null) }
}

const limitsOf = ({ drilling, milling }: ShopFields['limitsUm']) => ({ drilling, milling })
