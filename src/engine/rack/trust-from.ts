import type { Trust } from '#model/bar.ts'
import type { BarEvent, BarEventKind } from '#model/bar-event.ts'
import { type Use, uses } from '#model/wishes.ts'
import type { CheckOutcome } from '#engine/rack/check-outcome.ts'

/** What one check says of a bar, and when that was. */
export type DatedOutcome = CheckOutcome & { readonly id: string; readonly atIso: string }

/** Why a bar is to be looked at first. `due`: too long ago, or too many setups, since it was looked at. */
export type OpenReason = 'new here' | 'knocked' | 'nicked' | 'drilled' | 'reground' | 'another shop' | 'not looked at' | 'failed check' | 'due'

/** How far a bar may be relied on, and what of it is still open, oldest first: nothing, for one that is trusted. */
export type Reliance = { readonly trust: Trust; readonly open: readonly OpenReason[] }

/**
 * How far a bar may be relied on, out of all that happened to it.
 *
 * It begins as new here. A look over, or a check that proves a use, closes all that was open; a failed check opens, and so does a nick or a drilling
 * seen in a check and not stoned, whatever else it proves. Trust rises by nothing else, but for the stone after drilling: the burr harms, the dimple
 * does not, and the stone is the look that finds it. Signing out to a vise, machine or person of the shop changes nothing. Events count in the order
 * of time, then of ids; that is all a clock is trusted for: what an `undone` takes back is named, not dated, and an `undone` may be taken back as well.
 *
 * A drill bar stays one until it is ground again, whatever else happens to it; one being made stays in work until it was looked over; what is gone
 * comes back only by taking the event back. Common practice, no source.
 *
 * @param events  of this bar alone, in any order
 * @param outcomes  of its checks that no other check replaces
 */
export function relianceFrom(events: readonly BarEvent[], outcomes: readonly DatedOutcome[] = []): Reliance {
  const known = [...standingEvents(events), ...outcomes.filter(({ uses: good, failed, burrs }) => failed || good.length > 0 || burrs.length > 0)].sort(byTime)
  const { is, open } = known.reduce(after, { is: 'bar', open: ['new here'] })
  return { trust: is !== 'bar' ? is : open.length > 0 ? 'look first' : 'trusted', open: is === 'bar' ? open : [] }
}

/**
 * The uses a bar was proved for since anything happened that may have spoilt it or that changed its faces, coarsest first. A check at the plate
 * says anew what it is good for, a quick look adds to it, a failed check takes all away.
 */
export function provedUses(events: readonly BarEvent[], outcomes: readonly DatedOutcome[]): readonly Use[] {
  const known = [...standingEvents(events), ...outcomes].sort(byTime)
  const good = known.reduce<readonly Use[]>((sofar, one) => {
    if (!('failed' in one)) return one.kind === 'stoned' || takenOut.has(one.kind) || opens[one.kind] !== undefined ? [] : sofar
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

/** What a bar is, apart from what is open. */
type State = { readonly is: 'bar' | 'drill bar' | 'in work' | 'gone'; readonly open: readonly OpenReason[] }

function after(state: State, one: BarEvent | DatedOutcome): State {
  if (state.is === 'gone') return state
  if ('failed' in one) return one.burrs.reduce(opened, one.failed ? opened(state, 'failed check') : one.uses.length > 0 ? looked(state) : state)
  const { kind } = one, reason = opens[kind]
  if (kind === 'looked over') return looked(state)
  if (kind === 'stoned') return { ...state, open: state.open.filter((open) => open !== 'drilled') }
  if (kind === 'made drill bar') return { ...state, is: 'drill bar' }
  if (kind === 'in work' || kind === 'gone') return { ...state, is: kind }
  if (kind === 'reground' && state.is === 'drill bar') return opened({ ...state, is: 'bar' }, 'reground')
  return reason === undefined ? state : opened(state, reason)
}

const looked = (state: State): State => (state.is === 'drill bar' ? state : { is: 'bar', open: [] })
const opened = (state: State, reason: OpenReason): State => (state.open.includes(reason) ? state : { ...state, open: [...state.open, reason] })

/** What each event opens; one that is not named opens nothing. */
const opens: { readonly [Kind in BarEventKind]?: OpenReason } = {
  'knocked': 'knocked', 'drilled': 'drilled', 'reground': 'reground',
  'to another shop': 'another shop', 'back nicked': 'nicked', 'back drilled': 'drilled', 'back not looked at': 'not looked at',
}
const takenOut: ReadonlySet<BarEventKind> = new Set(['made drill bar', 'in work', 'gone'])
