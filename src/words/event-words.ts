import type { BarEventKind } from '#model/bar-event.ts'

/** What happened to a bar, in a word or two. */
export const eventWords: { readonly [kind in BarEventKind]: string } = {
  'added': 'added', 'looked over': 'looked over', 'knocked': 'knocked', 'drilled': 'drilled', 'stoned': 'stoned', 'reground': 'reground',
  'made drill bar': 'made a beater', 'in work': 'put in work', 'gone': 'retired', 'undone': 'taken back',
  'signed out': 'signed out', 'to another shop': 'lent to another shop', 'back': 'back', 'back fine': 'back, fine', 'back nicked': 'back, nicked',
  'back drilled': 'back, drilled', 'back not looked at': 'back, not looked at', 'on the chuck': 'used on the magnetic chuck', 'demagnetised': 'demagnetised', 'marked anew': 'marked anew',
}
