import { mmPerInch } from '#model/length.ts'
import type { Offer } from '#model/setup.ts'
import type { Units } from '#model/shop-record.ts'
import { wayWords } from '#words/say-place.ts'
import { type NameOf, wordingFor } from '#words/wording.ts'

/** What would have to be given up for a candidate to serve: `With a grip of 5, 40 A on edge would serve.` */
export function sayOffer({ wish, toMm, bars, stand }: Offer, units: Units, nameOf?: NameOf): string {
  const w = wordingFor(units, nameOf), to = w.length(roundedDown(toMm, units))
  const given = { gripMm: `a grip of ${to}`, airMm: to === '0' ? 'the cutter level with the jaw tops' : `only ${to} clear of the jaws`, bedAirMm: to === '0' ? 'the tip down to the bed' : `only ${to} above the bed` }
  const who = bars.length === 0 ? 'the bare bed' : stand === 'single' ? `${w.bars(bars)} alone` : `${w.bars(bars)} ${wayWords[stand]}`
  return `With ${given[wish]}, ${who} would serve.`
}

/** To hundredths of a millimetre or half thousandths of an inch: a wish brought down to what is said must be down far enough. */
function roundedDown(mm: number, units: Units): number {
  const step = units.length === 'mm' ? 0.01 : 0.0005 * mmPerInch
  return Math.floor(mm / step + 1e-6) * step
}
