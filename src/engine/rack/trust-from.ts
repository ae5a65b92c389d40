import type { Trust } from '#model/bar.ts'
import type { BarEvent, BarEventKind } from '#model/bar-event.ts'

/**
 * How far a bar may be relied on, out of all that happened to it.
 *
 * A bar starts as `look first`. Events count in the order of time, then of ids; that is all a clock is trusted for: what
 * an `undone` takes back is named, not dated, and an `undone` may be taken back as well.
 *
 * @param events  of this bar alone, in any order
 */
export function trustFrom(events: readonly BarEvent[]): Trust {
  return standingEvents(events).reduce<Trust>((trust, { kind }) => becomes[kind][trust] ?? trust, 'look first')
}

/** The events nobody took back, oldest first. */
export function standingEvents(events: readonly BarEvent[]): readonly BarEvent[] {
  const undoings = new Map<string, BarEvent[]>()
  for (const event of events) {
    if (event.undoes !== null) undoings.set(event.undoes, [...(undoings.get(event.undoes) ?? []), event])
  }
  const known = new Map<string, boolean>()
  const takenBack = (id: string): boolean => {
    const before = known.get(id)
    if (before !== undefined) return before
    known.set(id, false)
    const answer = (undoings.get(id) ?? []).some((undoing) => !takenBack(undoing.id))
    known.set(id, answer)
    return answer
  }
  return events.filter((event) => event.kind !== 'undone' && !takenBack(event.id)).sort(byTime)
}

/** The order in which things count: by the clocks of the devices, then by id. */
export function byTime(a: { readonly atIso: string; readonly id: string }, b: { readonly atIso: string; readonly id: string }): number {
  if (a.atIso !== b.atIso) return a.atIso < b.atIso ? -1 : 1
  return a.id === b.id ? 0 : a.id < b.id ? -1 : 1
}

type Row = { readonly [Before in Trust]?: Trust }

const lookFirst: Row = { trusted: 'look first' }

/**
 * What each event makes of each trust; not named: it stays. Common practice, no source.
 *
 * A drill bar stays one until it is ground again, whatever else happens to it; one being made stays in work until it was
 * looked over; what is gone comes back only by taking the event back.
 */
const becomes: { readonly [Kind in BarEventKind]: Row } = {
  'added': {},
  'looked over': { 'look first': 'trusted', 'in work': 'trusted' },
  'knocked': lookFirst,
  'drilled': lookFirst,
  'stoned': lookFirst,
  'reground': { ...lookFirst, 'drill bar': 'look first' },
  'made drill bar': { 'trusted': 'drill bar', 'look first': 'drill bar', 'in work': 'drill bar' },
  'in work': { 'trusted': 'in work', 'look first': 'in work', 'drill bar': 'in work' },
  'gone': { 'trusted': 'gone', 'look first': 'gone', 'drill bar': 'gone', 'in work': 'gone' },
  'undone': {},
}
