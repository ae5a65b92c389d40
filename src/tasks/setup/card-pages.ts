import type { Paper } from '#drafting/paper.ts'
import { viseCardPages } from '#drafting/setup/vise-card.ts'
import { svgFile } from '#drafting/svg.ts'
import { fittedJaws, viseFrom } from '#engine/rack/vise-from.ts'
import { holeRunThroughMm } from '#engine/setup/read-cut.ts'
import type { ViseCard } from '#tasks/setup/card-of-vise.ts'
import { calledSize } from '#words/say-bar.ts'
import { sayViseCard, type ViseCardFacts } from '#words/say-vise-card.ts'

/** A card with its pairs called by height and name, as it is worded and printed. */
export function cardFacts({ vise, shop, airMm, bedAirMm, rows }: ViseCard, day: string): ViseCardFacts {
  const { jawHeightMm, openingMm } = viseFrom(vise)
  return {
    vise: vise.name, jaws: fittedJaws(vise).name, jawHeightMm, openingMm, shop: shop.name, day, airMm, bedAirMm, runThroughMm: holeRunThroughMm,
    rows: rows.map((row) => ({ ...row, name: `${calledSize(row.heightMm, shop.units)} ${row.name}`.trim() })),
  }
}

/** The pages of a card, each as an SVG file in black to print. */
export function cardPages(card: ViseCard, day: string, paper: Paper): readonly string[] {
  return viseCardPages(sayViseCard(cardFacts(card, day), card.shop.units), paper).map((page) => svgFile(page, 'print'))
}
