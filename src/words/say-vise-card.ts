import { mmPerInch, wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { cautionsFor } from '#words/cautions.ts'
import { termsFor } from '#words/terms.ts'

/** What a vise card says, as worked out; a drill of null: none stays clear of the bed. */
export type ViseCardFacts = {
  readonly vise: { readonly name: string }
  readonly jaws: string
  readonly jawHeightMm: number
  readonly openingMm: number
  readonly shop: { readonly name: string }
  readonly airMm: number
  readonly bedAirMm: number
  readonly runThroughMm: number
  /** `calledMm`: the height the pair is called by. */
  readonly rows: readonly { readonly name: string; readonly calledMm: number; readonly slot: string | null; readonly worksFromMm: number; readonly gripMm: number; readonly largestDrillMm: number | null }[]
}

/** So much is nothing on a card that is read from a metre. Common practice, no source. */
const nothingMm = 0.01

/** A vise card in words. Heights are rounded up, grips and drills down: but for a hundredth never to more than there is. */
export function sayViseCard(card: ViseCardFacts, day: string, units: Units) {
  const { vise } = termsFor(units.words), say = (mm: number) => wordLength(mm, units)
  const rough = units.length === 'mm' ? 0.1 : mmPerInch * 0.005
  const wordRough = (parts: number) => wordLength(parts * rough, units, { fractions: false })
  const drillStep = units.length === 'mm' ? 0.5 : mmPerInch / 64
  return {
    title: `Card of ${card.vise.name}`,
    description: `What each pair is good for in the ${vise} ${card.vise.name}: finished height it works from, grip, largest drill clear of the bed.`,
    vise: card.vise.name,
    facts: [`${card.jaws}, ${say(card.jawHeightMm)} above the bed, opens ${say(card.openingMm)}, in ${units.length}`, [card.shop.name, day].filter((part) => part !== '').join(' · ')],
    headings: { pair: 'pair', slot: 'slot', from: 'finished height from', grip: 'grip', drill: 'largest drill' },
    rows: card.rows.map(({ name, calledMm, slot, worksFromMm, gripMm, largestDrillMm }) => ({
      pair: called(name, say(calledMm)), slot: slot ?? '–', from: worksFromMm <= 0 ? 'any' : wordRough(Math.ceil((worksFromMm - nothingMm) / rough)),
      grip: wordRough(Math.floor((gripMm + nothingMm) / rough)),
      drill: drillText(largestDrillMm, card.openingMm, drillStep, say),
    })),
    notes: [
      `Finished height: ${say(card.airMm)} clear of the jaws. Grip: of a part at least so high. Largest drill: 118°, run-through ${say(card.runThroughMm)}, tip ${say(card.bedAirMm)} above the bed; mind the bars.`,
      'Not computed: holding force, overhang, bending.',
      ...cautionsFor(new Set(['seating', 'handle off the vise'] as const), units).slice(0, 2),
    ],
  }
}

/** A name that begins with the height is enough. */
const called = (name: string, height: string): string => (name.startsWith(height) ? name : `${height} ${name}`.trim())

/** A drill larger than any part the vise takes is not a limit. */
function drillText(mm: number | null, openingMm: number, step: number, say: (mm: number) => string): string {
  if (mm === null || mm < step) return '–'
  return mm >= openingMm ? 'any' : `Ø${say(Math.floor(mm / step + 1e-6) * step)}`
}
