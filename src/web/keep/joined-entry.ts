import type { Change } from '#model/change.ts'
import type { Entry } from '#web/keep/entry.ts'

/**
 * Two edits of one record as one, so that the keys of one reading travel together; null where they are not two such edits.
 *
 * The later stands under its own id and saw what the earlier saw: the shop never hears of the earlier, so nothing may
 * name it. Only for an earlier one that never left this device.
 */
export function joinedEntry(earlier: Entry, later: Entry): Entry | null {
  const before = onlyChangeOf(earlier), after = onlyChangeOf(later)
  if (!before || !after || before.kind !== after.kind || before.record !== after.record) return null
  if (before.person !== after.person || before.device !== after.device) return null
  return { door: 'deeds', body: { changes: [{ ...after, fields: { ...before.fields, ...following(before, after) } }], checks: [], events: [] } }
}

function onlyChangeOf(entry: Entry): Change | null {
  if (entry.door !== 'deeds') return null
  const { changes, checks, events } = entry.body
  return changes.length === 1 && checks.length + events.length === 0 ? changes[0]! : null
}

/** The later fields, each with what the earlier change of it saw in that one's place. */
function following(before: Change, after: Change): Change['fields'] {
  return Object.fromEntries(Object.entries(after.fields).map(([field, { value, saw }]) => [
    field, { value, saw: [...new Set(saw.flatMap((id) => (id === before.id ? before.fields[field]?.saw ?? [] : [id])))] },
  ]))
}
