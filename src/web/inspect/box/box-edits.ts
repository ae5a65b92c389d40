import type { DraftBar, DraftRecord } from '#model/check-draft.ts'
import type { LengthUnit } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { beginDraft, changeForm } from '#web/inspect/draft/draft-edits.ts'
import { newDraft, newForm } from '#web/inspect/draft/new-draft.ts'
import { newId } from '#web/new-id.ts'

/** One end, the middle, the other end. */
export const boxStations = ['one end', 'middle', 'other end'] as const

/** A box of unknown bars, its first bar in hand. @returns the id of the half-done check */
export function beginBox(unit: LengthUnit, shop: ShopSnapshot): string {
  return beginDraft(newDraft(newForm('micrometer', unit, shop, { asFound: true, stations: boxStations.length, bars: [barAfter([])] })))
}

/** The next bar out of the box: with the next number, as thick and as long as the one before. @returns its id */
export function takeNextBar({ id, form: { bars } }: DraftRecord): string {
  const bar = barAfter(bars)
  changeForm(id, { bars: [...bars, bar] })
  return bar.bar
}

export function changeBar({ id, form: { bars } }: DraftRecord, bar: string, part: Partial<DraftBar>): void {
  changeForm(id, { bars: bars.map((one) => (one.bar === bar ? { ...one, ...part } : one)) })
}

/** A bar put back unmeasured; the first one stays to be filled in. */
export function leaveBar({ id, form: { bars } }: DraftRecord, bar: string): void {
  if (bars.length > 1) changeForm(id, { bars: bars.filter((one) => one.bar !== bar) })
}

function barAfter(bars: readonly DraftBar[]): DraftBar {
  const last = bars.at(-1), highest = Math.max(0, ...bars.map(({ name }) => (/^\d+$/.test(name) ? Number(name) : 0)))
  return { bar: newId(), isNew: true, name: String(highest + 1), thickness: last?.thickness ?? '', length: last?.length ?? '' }
}
