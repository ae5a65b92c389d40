import type { Trust } from '#model/bar.ts'
import type { BarEvent, BarEventKind } from '#model/bar-event.ts'
import { type Use, uses } from '#model/wishes.ts'
import type { CheckOutcome } from '#engine/rack/check-outcome.ts'

/** What one check says of a bar, and when that was. */
export type DatedOutcome = CheckOutcome & { readonly id: string; readonly atIso: string }

/**
 * How far a bar may be relied on, out of all that happened to it.
 *
 * A bar starts as `look first`. A check that proves a use counts like a look over, one that failed like a knock. Events count in the order of time, then of ids; that is all a clock is trusted for: what
 * an `undone` takes back is named, not dated, and an `undone` may be taken back as well.
 *
 * @param events  of this bar alone, in any order
 * @param outcomes  of its checks that no other check replaces
 */
export function trustFrom(events: readonly BarEvent[], outcomes: readonly DatedOutcome[] = []): Trust {
  const known = [...standingEvents(events), ...outcomes.filter(({ uses: good, failed }) => failed || good.length > 0)].sort(byTime)
  return known.reduce<Trust>((trust, one) => becomes['failed' in one ? (one.failed ? 'knocked' : 'looked over') : one.kind][trust] ?? trust, 'look first')
}

/**
 * The uses a bar was proved for since it was last knocked, drilled, stoned or ground, coarsest first. A check at the plate says
 * anew what it is good for, a quick look adds to it, a failed check takes all away.
 */
export function provedUses(events: readonly BarEvent[], outcomes: readonly DatedOutcome[]): readonly Use[] {
  const known = [...standingEvents(events), ...outcomes].sort(byTime)
  const good = known.reduce<readonly Use[]>((sofar, one) => {
    if (!('failed' in one)) return becomes[one.kind].trusted === undefined ? sofar : []
    if (one.failed) return []
    return one.kind === 'plate check' ? one.uses : [...sofar, ...one.uses]
  }, [])
  return uses.filter((use) => good.includes(use))
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
