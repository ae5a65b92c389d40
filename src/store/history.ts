import type { Change, RecordKind } from '#model/change.ts'
import type { FieldFate, HistoryEntry } from '#model/history.ts'
import { Refusal } from '#model/refusal.ts'
import { changesOf } from '#store/changes.ts'
import { checksOf } from '#store/checks.ts'
import { eventsOf } from '#store/events.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { type FieldStanding, standingOf } from '#store/standing.ts'
import { sheetsOfDraft, toldOf } from '#store/told.ts'

/**
 * Everything that happened to a record, oldest first: its changes with what became of each value, for a bar its checks and
 * events, for a setup, a job or a half-done check what was told.
 *
 * @throws Refusal `unknown-record`
 */
export function historyOf(store: Store, kind: RecordKind, id: string): Promise<HistoryEntry[]> {
  return atOneMoment(store, async (tx) => {
    const changes = await changesOf(tx, kind, id)
    if (changes.length === 0) throw new Refusal('unknown-record', { field: 'id', kind, given: id })
    const standing = standingOf(changes)
    const checks = kind === 'bar' ? await checksOf(tx, id) : []
    const events = kind === 'bar' ? await eventsOf(tx, id) : []
    const told = kind === 'setup' || kind === 'job' ? await toldOf(tx, kind === 'setup' ? 'setupId' : 'jobId', id) : kind === 'draft' ? await sheetsOfDraft(tx, id) : []
    const entries: HistoryEntry[] = [
      ...changes.map((change) => ({ ...byOf(change), what: 'change' as const, fields: fatesOf(change, standing) })),
      ...checks.map((check) => ({ ...byOf(check), what: 'check' as const, check })),
      ...events.map((event) => ({ ...byOf(event), what: 'event' as const, event })),
      ...told.map((one) => ({ ...byOf(one), what: 'told' as const, told: one })),
    ]
    return entries.sort((a, b) => (a.atIso === b.atIso ? (a.id < b.id ? -1 : 1) : a.atIso < b.atIso ? -1 : 1))
  })
}

function byOf({ id, atIso, person, device }: Omit<HistoryEntry, 'what'>): Omit<HistoryEntry, 'what'> {
  return { id, atIso, person, device }
}

function fatesOf(change: Change, standing: ReadonlyMap<string, FieldStanding>): Extract<HistoryEntry, { what: 'change' }>['fields'] {
  return Object.fromEntries(Object.entries(change.fields).map(([field, { value }]) => [field, { value, fate: fateOf(change, standing.get(field)) }]))
}

function fateOf(change: Change, field: FieldStanding | undefined): FieldFate {
  if (field?.stands.id === change.id) return 'stands'
  return field?.aside.some((one) => one.id === change.id) ? 'aside' : 'followed'
}
