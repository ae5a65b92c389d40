import { readSizeMm } from '#model/length.ts'
import type { BarFields } from '#model/bar-record.ts'
import type { Check } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import type { LengthUnit } from '#model/length.ts'
import { editOf } from '#model/record-fields.ts'
import type { Applied } from '#store/changes.ts'
import { keepDeed } from '#store/deeds.ts'
import { recordOf } from '#store/records.ts'
import { inTransaction, type Store } from '#store/store.ts'
import type { Maker } from '#tasks/maker.ts'
import { barNamed } from '#tasks/rack/bar-named.ts'
import { readText } from '#tasks/rack/read-text.ts'
import { slotsNamed } from '#tasks/rack/slots-named.ts'

/** What to change, as typed; what is left out stays. A slot of no name takes the bar out of its slot. */
export type BarEdit = {
  readonly height?: string
  readonly thickness?: string
  readonly length?: string
  readonly unit?: LengthUnit
  readonly name?: string
  readonly slot?: string
  readonly note?: string
}

/**
 * Changes what is written down about a bar. A height is never written over: it comes as a new stated check, and the bar's
 * height then counts as marked until it is measured again; a thickness typed here is marked likewise.
 *
 * @param idOrCode  the bar's id or the code of its label
 * @throws Refusal `bar-not-known`, what `readLengthMm` refuses, `size-not-positive`, `value-not-allowed`
 */
export function editBar(store: Store, idOrCode: string, edit: BarEdit, by: Maker): Promise<Applied> {
  return inTransaction(store, async (tx) => {
    const bar = await barNamed(tx, idOrCode)
    const unit = edit.unit ?? (await recordOf(tx, 'shop', 'shop')).units.length
    const slots = await slotsNamed(tx, by)
    const fields: Partial<BarFields> = {
      ...(edit.name === undefined ? {} : { name: readText('bar', 'name', edit.name) }),
      ...(edit.note === undefined ? {} : { note: readText('bar', 'note', edit.note) }),
      ...(edit.slot === undefined ? {} : { slotId: slots.idOf(edit.slot) }),
      ...(edit.thickness === undefined ? {} : { thicknessMm: readSizeMm(edit.thickness, unit, 'thickness'), thicknessStanding: 'marked' }),
      ...(edit.length === undefined ? {} : { lengthMm: readSizeMm(edit.length, unit, 'length') }),
    }
    const checks = edit.height === undefined ? [] : [statedHeight(bar.id, edit.height, readSizeMm(edit.height, unit, 'height'), by)]
    const changes = Object.keys(fields).length === 0 ? [] : [editOf('bar', bar, fields, by)]
    return keepDeed(tx, { changes: [...slots.made, ...changes], checks, events: [] })
  })
}

function statedHeight(bar: string, text: string, heightMm: number, by: Maker): Check {
  const { person, device, atIso } = by
  return { id: by.newId(), method: 'stated', replaces: null, ...nothingTaken, readings: [{ bar, station: 0, xMm: null, ...onTheFirstLine, text, heightMm }], note: '', person, device, atIso }
}
