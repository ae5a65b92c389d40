import type { GiveUp, LowReason, Window } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import { type Wording, wordingFor } from '#words/wording.ts'

/** What sets the low end of the heights that work. */
export const lowReasonWords: { readonly [reason in LowReason]: string } = {
  'cutter-over-jaw': 'the cutter over the jaws',
  'drill-tip': 'the tip of the drill below the part',
  'through-cut': 'the cut that comes out below the part',
  'bed': 'the bed',
}

/** What sets the high end. */
export const highReasonWords: { readonly [reason in Window['highBecause']]: string } = {
  'grip': 'the grip',
  'contact-line': 'the jaw above the line where it touches the round part',
}

/** The heights that work and what sets each end: `Heights that work: 33 (the cutter over the jaws) to 35 (the grip).` */
export function sayWindow(window: Window, units: Units): string {
  const w = wordingFor(units), lowMm = w.length(window.lowMm), highMm = w.length(window.highMm)
  const low = lowReasonWords[window.lowBecause], high = highReasonWords[window.highBecause]
  if (window.giveUp !== null) return `No height works: ${low} asks for at least ${lowMm}, ${high} for at most ${highMm}.`
  if (lowMm === highMm) return `One height works: ${lowMm}, set by ${low} and by ${high}.`
  return `Heights that work: ${lowMm} (${low}) to ${highMm} (${high}).`
}

/** Each wish that, given up alone, would leave exactly one height. */
export function sayGiveUp(giveUp: GiveUp, units: Units): readonly string[] {
  const w = wordingFor(units)
  const offers: readonly (readonly [number | null, (mm: number, w: Wording) => string])[] = [
    [giveUp.gripMm, (mm) => `Grip ${w.length(mm)} instead.`],
    [giveUp.airMm, (mm) => `${w.length(mm)} clear of the jaws instead.`],
    [giveUp.bedAirMm, (mm) => `${w.length(mm)} of air above the bed instead.`],
    [giveUp.runThroughMm, (mm) => `Let it come out only ${w.length(mm)} below.`],
  ]
  return offers.flatMap(([mm, say]) => (mm === null ? [] : [say(mm, w)]))
}
