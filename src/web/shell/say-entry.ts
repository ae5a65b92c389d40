import { partOf } from '#model/field-parts.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { plainUnits, termsFor } from '#words/terms.ts'
import type { Entry } from '#web/keep/entry.ts'

/** What an entry is about, in a few words: `bar 35 C: thickness, slot`; of a new record all its fields. */
export function sayEntry(entry: Entry, shop: ShopSnapshot | null): string {
  switch (entry.door) {
    case 'deeds': return [
      ...entry.body.changes.map(({ kind, record, fields }) => `${nameOfRecord(kind, record, shop)}: ${Object.keys(fields).map(plain).join(', ')}`),
      ...entry.body.checks.map(({ readings, looks }) => `check of ${barNames([...readings, ...looks].map(({ bar }) => bar), shop)}`),
      ...entry.body.events.map(({ kind, bar }) => `${barNames([bar], shop)}: ${kind}`),
    ].join('; ')
    case 'unserved': return 'a question that nothing served'
    case 'told': return `a printed ${entry.body.map(({ what }) => what).join(', ')}`
  }
}

export function nameOfRecord(kind: string, id: string, shop: ShopSnapshot | null): string {
  switch (kind) {
    case 'shop': return 'shop'
    case 'bar': return `bar ${barNames([id], shop)}`
    case 'vise': return `${termsFor((shop?.shop.units ?? plainUnits).words).vise} ${shop?.vises.find((one) => one.id === id)?.name ?? '?'}`
    case 'slot': return `slot ${shop?.slots.find((one) => one.id === id)?.name ?? '?'}`
    case 'mates': return `mates ${shop?.mates.find((one) => one.id === id)?.name ?? '?'}`.trim()
    case 'part': return `part ${shop?.parts.find((one) => one.id === id)?.name ?? '?'}`
    case 'setup': return `setup ${shop?.setups.find((one) => one.id === id)?.title ?? '?'}`.trim()
    case 'person': return `person ${shop?.people.find((one) => one.id === id)?.initials ?? '?'}`
    case 'draft': return 'half-done check'
    case 'instrument': return `instrument ${shop?.instruments.find((one) => one.id === id)?.name ?? '?'}`
    case 'machine': return `machine ${shop?.machines.find((one) => one.id === id)?.name ?? '?'}`
    case 'stock': return `stock ${shop?.stock.find((one) => one.id === id)?.name ?? '?'}`
    case 'job': return `job ${shop?.jobs.find((one) => one.id === id)?.name || '?'}`
    default: return kind
  }
}

/** A field's key as words: `thicknessMm` → `thickness`, `fittedJawSetId` → `fitted jaw set`; of a cell of a check its place, counted from 1. */
export function plain(field: string): string {
  const cell = /^typed\.[^/]+\/[01]\/[AB]\/(\d+)\/\d+$/.exec(field)
  if (cell) return `reading at station ${Number(cell[1]) + 1}`
  const { whole } = partOf(field)
  return whole.replace(/(Mm|Um|Id|Iso)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
}

function barNames(ids: readonly string[], shop: ShopSnapshot | null): string {
  return [...new Set(ids)].map((id) => shop?.bars.find((one) => one.id === id)?.name || '?').join(', ')
}
