import type { Paper } from '#drafting/paper.ts'
import { viseCardPages } from '#drafting/setup/vise-card.ts'
import { svgFile } from '#drafting/svg.ts'
import type { ViseCard } from '#engine/rack/vise-card.ts'
import { sayViseCard } from '#words/say-vise-card.ts'

/** The pages of a card, each as an SVG file in black to print. */
export function cardPages(card: ViseCard, day: string, paper: Paper): readonly string[] {
  return viseCardPages(sayViseCard(card, day, card.shop.units), paper).map((page) => svgFile(page, 'print'))
}
