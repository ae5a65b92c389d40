import { readSizeMm } from '#model/length.ts'
import { deedOfNewBars } from '#engine/rack/new-bars.ts'
import type { LengthUnit } from '#model/length.ts'
import { firstChange } from '#model/record-fields.ts'
import { keepDeed } from '#store/deeds.ts'
import { recordOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'
import { listRack, type RackLine } from '#tasks/rack/list-rack.ts'
import { readText } from '#tasks/rack/read-text.ts'
import { slotsNamed } from '#tasks/rack/slots-named.ts'

/** Bars as typed. Left out: the shop's unit, no name, a single bar, no slot, no note, not for drilling into. */
export type BarsAsked = {
  readonly height: string
  readonly thickness: string
  readonly length: string
  readonly unit?: LengthUnit
  readonly name?: string
  readonly pair?: boolean
  readonly slot?: string
  readonly note?: string
  readonly drillBar?: boolean
}

/**
 * Adds a bar, or two that are mates. They enter as `look first` with their sizes as marked, whatever was typed.
 *
 * @throws Refusal what `readLengthMm` refuses, `size-not-positive`, `value-not-allowed` for a text too long
 */
export function addBars(store: Store, asked: BarsAsked, by: Maker): Promise<RackLine[]> {
  return inTransaction(store, async (tx) => {
    const unit = asked.unit ?? (await recordOf(tx, 'shop', 'shop')).units.length
    const heightMm = readSizeMm(asked.height, unit, 'height')
    const thicknessMm = readSizeMm(asked.thickness, unit, 'thickness')
    const lengthMm = readSizeMm(asked.length, unit, 'length')
    const name = readText('bar', 'name', asked.name), note = readText('bar', 'note', asked.note)
    const slots = await slotsNamed(tx, by)
    const slotId = slots.idOf(asked.slot ?? '')
    const mates = asked.pair === true ? [firstChange('mates', by.newId(), { name, note: '' }, by)] : []
    const bars = (asked.pair === true ? ['left', 'right'] : ['']).map(() => ({
      id: by.newId(), code: by.newCode(), name, heightMm, heightText: asked.height, thicknessMm, lengthMm,
      matesId: mates[0]?.record ?? null, slotId, note, drillBar: asked.drillBar === true,
    }))
    const deed = deedOfNewBars(bars, by)
    await keepDeed(tx, { ...deed, changes: [...slots.made, ...mates, ...deed.changes] })
    const added = new Set(bars.map((bar) => bar.id))
    return (await listRack(tx)).filter((line) => added.has(line.id))
  })
}
