import { wordLength } from '#model/length.ts'
import type { BarEventKind } from '#model/bar-event.ts'
import type { Trust } from '#model/bar.ts'
import type { Units } from '#model/shop-record.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'

/** A state as it stands in a row: a mark and a word, so that it never rests on colour. */
export const trustWords: { readonly [trust in Trust]: { readonly mark: string; readonly word: string } } = {
  'trusted': { mark: '✓', word: 'trusted' },
  'look first': { mark: '?', word: 'look first' },
  'drill bar': { mark: '×', word: 'beater' },
  'in work': { mark: '…', word: 'in work' },
  'gone': { mark: '−', word: 'retired' },
}

const eventWords: { readonly [kind in BarEventKind]: string } = {
  'added': 'added', 'looked over': 'looked over', 'knocked': 'knocked', 'drilled': 'drilled', 'stoned': 'stoned', 'reground': 'reground',
  'made drill bar': 'made a beater', 'in work': 'put in work', 'gone': 'retired', 'undone': 'taken back',
  'signed out': 'signed out', 'to another shop': 'lent to another shop', 'back': 'back', 'back fine': 'back, fine', 'back nicked': 'back, nicked',
  'back drilled': 'back, drilled', 'back not looked at': 'back, not looked at', 'on the chuck': 'used on the magnetic chuck', 'demagnetised': 'demagnetised', 're-marked': 'marked anew',
}

export function sayEvent(kind: BarEventKind): string {
  return eventWords[kind]
}

/** How the bar is called by itself: its height and the name on it. */
export function nameOfBar({ calledMm, record, mates }: RackBar, units: Units): string {
  const height = calledMm === null ? '?' : wordLength(calledMm, units)
  return `${height} ${record.name || mates?.name || ''}`.trim()
}

/** Why it stands as it does, in one sentence. */
export function sayState({ trust, latest, checked, elsewhere, record }: RackBar): string {
  const since = checked ? `${checked.failed ? 'failed its check' : 'checked'} ${saidOn(checked.check)}` : latest && latest.kind !== 'added' ? `${sayEvent(latest.kind)} ${saidOn(latest)}` : 'new here'
  const state = {
    'trusted': `Trusted: ${since}.`,
    'look first': `Look at it first: ${since}. Wipe it, feel for burrs, then say that it was looked over.`,
    'drill bar': 'A beater: may be drilled or cut into.',
    'in work': 'In work: being made, not for use yet.',
    'gone': `Retired ${latest ? sayDay(latest.atIso) : ''}.`.replace(' .', '.'),
  }[trust]
  return elsewhere === null ? state : `${state} ${record.where.at === 'out' ? `Out with ${elsewhere}.` : `Now in ${elsewhere}.`}`
}

/** `12 Mar 2026 by KM`. */
function saidOn({ atIso, person }: { readonly atIso: string; readonly person: string }): string {
  return `${sayDay(atIso)}${person ? ` by ${person}` : ''}`
}

/** A day as this person writes it. */
export function sayDay(iso: string): string {
  return new Date(iso).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' })
}
