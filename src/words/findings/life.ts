import { eventWords } from '#words/event-words.ts'
import type { Fact } from '#model/refusal.ts'
import { wordLength } from '#model/length.ts'
import { capital, listOf, type Say, type Wording } from '#words/wording.ts'

/** The lines of a bar's life. */
export const lifeWords: { readonly [code: string]: Say } = {
  'life-added': ({ heightMm }, w) => (heightMm === null ? 'Came into the rack.' : `Came into the rack, marked ${w.length(heightMm)}.`),
  'life-event': ({ kind, note }) => `${capital(eventWords[kind as keyof typeof eventWords] ?? '?')}${typeof note === 'string' && note !== '' ? `: ${note}` : ''}.`,
  'life-stated': ({ heightMm }, w) => `Marked height ${w.length(heightMm)}.`,
  'life-checked': ({ method, heightMm, uUm, failed, uses, burrs }, w) => {
    const known = typeof uUm === 'number' && typeof heightMm === 'number' ? `${wordLength(heightMm, w.units, { decimals: w.units.length === 'mm' ? 3 : 5 })} ± ${w.micrometres(2 * uUm)}` : w.length(heightMm)
    return `Checked ${methods[method as string] ?? ''}${heightMm === null ? '' : `: ${known}`}${seen(burrs)}; ${outcome(failed, uses, w)}.`
  },
  'life-set-up': ({ title, vise }, w) => `Set up in ${w.text(vise)}${title === '' ? '' : `: ${w.text(title)}`}.`,
  'life-where': ({ at, who }, w) => (at === 'slot' ? 'Put back in its slot.' : `${at === 'vise' ? 'Put in' : 'Out with'} ${w.text(who)}.`),
  'life-slot': ({ slot }, w) => (slot === null ? 'Has no slot any more.' : `Moved to slot ${w.text(slot)}.`),
  'life-mates': ({ mates }, w) => (mates === null ? 'No longer mates with any bar.' : `Mates: ${mates === '' ? 'unnamed' : w.text(mates)}.`),
  'life-renamed': ({ name }, w) => (name === '' ? 'The name was taken off.' : `Named ${w.text(name)}.`),
  'life-size': ({ size, mm }, w) => `${capital(w.text(size))} written as ${w.length(mm)}.`,
  'life-wear': ({ um, expandedUm, sinceDay }, w) => `Lower by ${w.micrometres(um)} since ${w.text(sinceDay)}: more than the uncertainty of ${w.micrometres(expandedUm)}, so it wears.`,
  'life-growth': ({ um, expandedUm, sinceDay }, w) => `Higher by ${w.micrometres(um)} since ${w.text(sinceDay)}: more than the uncertainty of ${w.micrometres(expandedUm)}, so it grows; look for a burr first.`,
}

const methods: { readonly [method: string]: string } = { 'compare': 'on the plate', 'turn-over': 'on the plate, either face up', 'micrometer': 'by micrometer', 'rock': 'for rocking' }

/** What a check saw of nicks and holes. */
const seen = (burrs: Fact | undefined): string => (Array.isArray(burrs) && burrs.length > 0 ? `, seen ${listOf(burrs.map(String))} and not stoned` : '')

function outcome(failed: Fact | undefined, uses: Fact | undefined, w: Wording): string {
  if (failed === true) return 'failed'
  return Array.isArray(uses) && uses.length > 0 ? `good for ${listOf(uses.map((use: Fact) => w.text(use)))}` : 'nothing proved'
}
