import { withUnit, wordLength } from '#model/length.ts'
import type { Choice, Rejection } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import type { Way } from '#model/wishes.ts'
import { calledMm } from '#words/say-bar.ts'
import { statusWords, trustWords, wayWords, whereWords } from '#words/say-place.ts'
import type { Terms } from '#words/terms.ts'
import type { Bench } from '#web/setup/view/bench.ts'

export type Rest = Pick<Choice, 'bars' | 'stand' | 'stacked' | 'seatMm'>

/** The one figure of a choice: the height of its bars as marked on them; lying flat their thickness, two high both added. */
export function figureOf({ bars, stand, seatMm }: Rest, { names }: Bench, units: Units): string {
  const marked = stand === 'on edge' || stand === 'single' ? names.markedMm(bars[0]!) : null
  return wordLength(marked ?? calledMm(seatMm, units), units)
}

/** The height as it is engraved where that is rounder than in the person's own units: `1 3/8 in` for 34.925, `30 mm` for 1.1811; else null. */
export function engravedElse({ bars, stand }: Rest, { names }: Bench, units: Units): string | null {
  const mm = stand === 'on edge' || stand === 'single' ? names.markedMm(bars[0]!) : null
  if (mm === null) return null
  const other = withUnit(mm, { ...units, length: units.length === 'mm' ? 'in' : 'mm' })
  return decimalsIn(other) < decimalsIn(wordLength(mm, units)) ? other : null
}

const decimalsIn = (text: string): number => /[.,](\d+)/.exec(text)?.[1]!.length ?? 0

/** `35 C`: what is written on a bar in the drawing, and what it is called in sentences. */
export function barLabel(id: string, { names, bars }: Pick<Bench, 'names' | 'bars'>, units: Units): string {
  const height = wordLength(names.markedMm(id) ?? calledMm(bars.get(id)?.heightMm ?? NaN, units), units), name = names.nameOf(id)
  return name.startsWith(height) ? name : `${height} ${name}`.trim()
}

/** `pair C`, `bar 32 odd`, `B on C`, `no bars`. */
export function nameOfRest({ bars, stand, stacked }: Rest, bench: Bench, units: Units): string {
  const pair = (ids: readonly string[]) => bench.names.matesOf(ids[0]!)?.name || ids.map((id) => barLabel(id, bench, units)).join(' and ')
  switch (stand) {
    case 'bed': return 'no bars'
    case 'single': return `bar ${bench.names.nameOf(bars[0]!) || barLabel(bars[0]!, bench, units)}`
    case 'stack': {
      const [lower, upper] = stacked ?? [], flat = (way: Way | undefined) => (way === 'lying flat' ? ' lying flat' : '')
      return `${pair(bars.slice(2))}${flat(upper)} on ${pair(bars.slice(0, 2))}${flat(lower)}`
    }
    case 'on edge':
    case 'lying flat': return `pair ${pair(bars)}`
  }
}

/** How it stands, as far as that is not the usual way: `lying flat, inboard, look first`. */
export function howItStands({ stand, status, trust, where }: Pick<Choice, 'stand' | 'status' | 'trust' | 'where'>, terms: Terms): readonly string[] {
  const usual: readonly Way[] = ['on edge', 'bed']
  return [
    ...(usual.includes(stand) ? [] : [stand === 'single' ? 'one bar' : wayWords[stand]]),
    statusWords[status],
    ...(trust === 'trusted' ? [] : [trustWords[trust]]),
    ...(where === 'slot' ? [] : [whereWords(where, terms)]),
  ].filter((word, at, all) => all.indexOf(word) === at && word !== '')
}

/** Slots of a choice, `–` where none is known. */
export function slotOf({ bars }: Pick<Choice | Rejection, 'bars'>, { names }: Bench): string {
  return names.slotsOf(bars).join(' · ') || '–'
}
