import { readSizeMm } from '#model/length.ts'
import type { Reading } from '#model/check.ts'
import { onTheFirstLine } from '#model/plain-check.ts'
import type { LengthUnit } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { newCode, newId } from '#web/new-id.ts'
import type { Edit } from '#web/write.ts'

/** How a height was come by, and its readings as typed: one list for each bar, empty texts where nothing was typed. */
export type HeightTexts = { readonly method: 'stated' | 'micrometer'; readonly stated: string; readonly measured: readonly (readonly string[])[] }

/** Places along a bar at which it may be measured; the first must be, the others may. */
export const stations = ['one end', 'middle', 'other end'] as const

export function noHeights(bars: number): HeightTexts {
  return { method: 'stated', stated: '', measured: Array.from({ length: bars }, () => stations.map(() => '')) }
}

/**
 * The readings of a check, bar by bar in the order of `ids`.
 *
 * @throws Refusal of the first text that cannot be read, its field `height`, or `bars[1].readings[0]`
 */
export function readHeights({ method, stated, measured }: HeightTexts, ids: readonly string[], unit: LengthUnit): Reading[] {
  if (method === 'stated') {
    const heightMm = readSizeMm(stated, unit, 'height')
    return ids.map((bar) => ({ bar, station: 0, xMm: null, ...onTheFirstLine, text: stated.trim(), heightMm }))
  }
  return ids.flatMap((bar, at) => measured[at]!.flatMap((text, station) => (
    station > 0 && text.trim() === '' ? [] : [{ bar, station, xMm: null, ...onTheFirstLine, text: text.trim(), heightMm: readSizeMm(text, unit, `bars[${at}].readings[${station}]`) }]
  )))
}

/** The slot of that name, and the edit that makes it where the rack has none yet; an empty name is no slot. */
export function slotNamed(name: string, shop: ShopSnapshot): { readonly slotId: string | null; readonly edits: readonly Edit[] } {
  const wanted = name.trim()
  if (wanted === '') return { slotId: null, edits: [] }
  if (wanted.length > 20) throw new Refusal('value-not-allowed', { field: 'slot', given: wanted, needed: 'at most 20 letters' })
  const known = shop.slots.find((slot) => slot.name.toLowerCase() === wanted.toLowerCase())
  if (known) return { slotId: known.id, edits: [] }
  const slotId = newId()
  return { slotId, edits: [{ kind: 'slot', record: slotId, fields: { code: newCode(), name: wanted } }] }
}
