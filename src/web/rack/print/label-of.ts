import type { Label } from '#drafting/rack/labels.ts'
import type { SlotRecord } from '#model/bar-record.ts'
import { labelText } from '#model/label-code.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'

/** The strip for a bar: its height large, then its name and slot. */
export function labelOfBar({ record: { code, name }, calledMm, mates, slot }: RackBar, units: Units): Label {
  return {
    qr: labelText('bar', code), large: calledMm === null ? '?' : wordLength(calledMm, units), code,
    under: [name || mates?.name || '', slot === null ? '' : `slot ${slot.name}`].filter((part) => part !== '').join(' · '),
  }
}

/** The strip for a slot: its name large, then the heights that belong in it, lowest first. */
export function labelOfSlot({ id, code, name }: SlotRecord, bars: readonly RackBar[], units: Units): Label {
  const heights = bars.flatMap(({ record, calledMm, trust }) => (record.slotId !== id || calledMm === null || trust === 'gone' ? [] : [calledMm]))
  return { qr: labelText('slot', code), large: name, code, under: [...new Set(heights)].sort((a, b) => a - b).map((mm) => wordLength(mm, units)).join(' · ') || 'slot' }
}
