import type { OpenReason } from '#engine/rack/trust-from.ts'
import { wordLength } from '#model/length.ts'
import type { BarEventKind } from '#model/bar-event.ts'
import type { Trust } from '#model/bar.ts'
import type { Units } from '#model/shop-record.ts'
import { listOf } from '#words/wording.ts'
import { eventWords } from '#words/event-words.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { sayDay } from '#web/today.ts'

/** A state as it stands in a row: a mark and a word, so that it never rests on colour. */
export const trustWords: { readonly [trust in Trust]: { readonly mark: string; readonly word: string } } = {
  'trusted': { mark: '✓', word: 'trusted' },
  'look first': { mark: '?', word: 'look first' },
  'drill bar': { mark: '×', word: 'beater' },
  'in work': { mark: '…', word: 'in work' },
  'gone': { mark: '−', word: 'retired' },
}

export function sayEvent(kind: BarEventKind): string {
  return eventWords[kind]
}

/** How the bar is called by itself: its height and the name on it. */
export function nameOfBar({ calledMm, record, mates }: RackBar, units: Units): string {
  const height = calledMm === null ? '?' : wordLength(calledMm, units)
  return `${height} ${record.name || mates?.name || ''}`.trim()
}

/** The same among others: those of one name are told apart by the begin of their codes. */
export function nameAmong(bar: RackBar, others: readonly RackBar[], units: Units): string {
  const called = nameOfBar(bar, units)
  return others.some((other) => other.record.id !== bar.record.id && nameOfBar(other, units) === called) ? `${called} ${bar.record.code.slice(0, 4)}` : called
}

/** Some bars, each name once: `35 C 1 and 35 C 2`. */
export const nameOfBars = (bars: readonly RackBar[], units: Units): string => listOf([...new Set(bars.map((bar) => nameOfBar(bar, units)))])

/** Why a bar is to be looked at first, each reason in a few words. */
const openWords: { readonly [reason in OpenReason]: string } = {
  'new here': 'new here', 'knocked': 'knocked', 'nicked': 'nicked', 'drilled': 'drilled, not stoned since', 'reground': 'reground', 'another shop': 'was at another shop',
  'not looked at': 'came back and nobody looked', 'failed check': 'failed its check', 'due': 'due to be looked at again',
}

/** Why it stands as it does, in a sentence or two; where it is stands elsewhere. */
export function sayState({ trust, condition: { open, magnetised, due }, latest, checked, orphan }: RackBar): string {
  const since = checked ? `${checked.failed ? 'failed its check' : 'checked'} ${saidOn(checked.check)}` : latest && latest.kind !== 'added' ? `${sayEvent(latest.kind)} ${saidOn(latest)}` : 'new here'
  const when = latest && latest.kind !== 'added' && !checked ? ` (${saidOn(latest)})` : ''
  const state = {
    'trusted': `Trusted: ${since}.`,
    'look first': `Look at it first: ${listOf(open.map((reason) => openWords[reason]))}${when}. Wipe it, feel for burrs, then say that it was looked over.`,
    'drill bar': 'A beater: may be drilled or cut into.',
    'in work': 'In work: being made, not for use yet.',
    'gone': `Retired ${latest ? sayDay(latest.atIso) : ''}.`.replace(' .', '.'),
  }[trust]
  return [
    state,
    ...(orphan ? ['Its mate is gone or was changed: it is no pair now.'] : []),
    ...(magnetised ? ['Magnetised: to be demagnetised before it goes on the plate or near chips.'] : []),
    ...(due?.onDay && !due.isDue && trust === 'trusted' ? [`To be looked at again by ${sayDay(due.onDay)}.`] : []),
  ].join(' ')
}

/** `12 Mar 2026 by KM`. */
function saidOn({ atIso, person }: { readonly atIso: string; readonly person: string }): string {
  return `${sayDay(atIso)}${person ? ` by ${person}` : ''}`
}
