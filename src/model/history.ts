import type { BarEvent } from '#model/bar-event.ts'
import type { Check } from '#model/check.ts'
import type { Fact } from '#model/refusal.ts'
import type { Told } from '#model/setup-record.ts'

/**
 * What became of the value a change gave a field: it stands, a later change followed it, or it clashed with the one
 * that stands and was kept aside.
 */
export type FieldFate = 'stands' | 'followed' | 'aside'

/** One thing that happened to a record, oldest first by the clocks of the devices, then by id. */
export type HistoryEntry = { readonly id: string; readonly atIso: string; readonly person: string; readonly device: string } & (
  | { readonly what: 'change'; readonly fields: { readonly [field: string]: { readonly value: Fact; readonly fate: FieldFate } } }
  | { readonly what: 'check'; readonly check: Check }
  | { readonly what: 'event'; readonly event: BarEvent }
  | { readonly what: 'told'; readonly told: Told }
)
