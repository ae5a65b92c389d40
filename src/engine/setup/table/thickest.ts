import { isMilled, isThroughCut } from '#engine/setup/reach.ts'
import type { TableQuestion } from '#engine/setup/table/table.ts'

/** The thickest bars that may lie along both edges of the part over its whole length, in mm; null where nothing comes out below. */
export type ThickestAtEdges = { readonly frontMm: number | null; readonly backMm: number | null }

/** What serves at either edge, as two like bars have to. */
export function thickestAtBothMm({ frontMm, backMm }: ThickestAtEdges): number | null {
  return frontMm === null || backMm === null ? frontMm ?? backMm : Math.min(frontMm, backMm)
}

/**
 * How thick a bar flush with an edge may be before it comes nearer to a hole or a through cut than the air wished. At or
 * below 0: none may lie there.
 *
 * @source SETUP-RULES
 */
export function thickestAtEdges({ part, cuts, wishes: { holeAirMm } }: Pick<TableQuestion, 'part' | 'cuts' | 'wishes'>): ThickestAtEdges {
  const betweenMm = part.betweenJawsMm!
  const spans = cuts.flatMap((cut): readonly (readonly [fromMm: number, toMm: number])[] => {
    if (cut.kind === 'hole') return cut.through ? [[cut.yMm - cut.diameterMm / 2, cut.yMm + cut.diameterMm / 2]] : []
    return isMilled(cut) && cut.rect && isThroughCut(cut, part.heightMm) ? [[cut.rect.y0Mm, cut.rect.y1Mm]] : []
  })
  if (spans.length === 0) return { frontMm: null, backMm: null }
  return {
    frontMm: Math.min(...spans.map(([fromMm]) => fromMm - holeAirMm)),
    backMm: Math.min(...spans.map(([, toMm]) => betweenMm - toMm - holeAirMm)),
  }
}
