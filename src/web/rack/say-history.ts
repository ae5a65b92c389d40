import type { BarFields } from '#model/bar-record.ts'
import { wordLength } from '#model/length.ts'
import type { HistoryEntry } from '#model/history.ts'
import type { Fact } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { keyWord } from '#words/key-words.ts'
import { termsFor } from '#words/terms.ts'
import { sayEvent } from '#web/rack/say-bar.ts'
import { sayCheck } from '#web/rack/say-check.ts'
import { sayWhere } from '#web/rack/say-where.ts'

/** One thing that happened to a bar, in words: `thickness 8, slot B4`. */
export function sayHistory(entry: HistoryEntry, bar: string, shop: ShopSnapshot, units: Units): string {
  switch (entry.what) {
    case 'change': return Object.entries(entry.fields).map(([field, { value, fate }]) =>
      `${keyWord(field, termsFor(units.words)) ?? field}: ${sayValue(field, value, shop, units)}${fate === 'aside' ? ' (kept aside)' : ''}`).join(', ')
    case 'check': return sayCheck(entry.check, bar, units)
    case 'event': return `${sayEvent(entry.event.kind)}${entry.event.note === '' ? '' : `: ${entry.event.note}`}`
    case 'told': return `on a printed ${entry.told.what}`
  }
}

function sayValue(field: string, value: Fact, shop: ShopSnapshot, units: Units): string {
  if (value === null) return 'none'
  if (field === 'slotId') return shop.slots.find(({ id }) => id === value)?.name ?? '?'
  if (field === 'matesId') return shop.mates.find(({ id }) => id === value)?.name || 'unnamed'
  if (typeof value === 'number') return field.endsWith('Mm') ? wordLength(value, units) : String(value)
  if (typeof value === 'string') return value === '' ? 'none' : value
  return field === 'where' ? sayWhere(value as BarFields['where'], shop) : JSON.stringify(value)
}
