import type { Point } from '#drafting/scene.ts'
import type { Shown } from '#drafting/setup/shown.ts'

/** Paper kept free around and between the views, in mm. */
export type Margins = {
  readonly leftMm: number
  readonly rightMm: number
  readonly topMm: number
  readonly bottomMm: number
  /** For the lettering under the section. */
  readonly labelsMm: number
  /** How far things may stand out of the part at either end of the plan. */
  readonly overhangMm: number
  /** How far the bed is drawn past the moving jaw. */
  readonly bedPastMm: number
}

export type Views = 'both' | 'section' | 'plan'

/** Where the section and the plan lie on the paper. Both have the same scale and the same axis across the jaws. */
export type Frame = {
  readonly scale: number
  readonly views: Views
  /** Width in which each jaw is drawn; how thick a jaw really is, nobody asks. */
  readonly jawMm: number
  readonly bedMm: number
  readonly bedPastMm: number
  readonly overhangMm: number
  /** Underside of the vise in the section. */
  readonly sectionEndMm: number
  /** A point of the section: y across from the fixed jaw, z up from the bed. */
  readonly inSection: (yMm: number, zMm: number) => Point
  /** A point of the plan: x along from the part's left end, which is at the bottom; y across from the fixed jaw. */
  readonly inPlan: (xMm: number, yMm: number) => Point
}

/**
 * Scales to choose from: `standard` is what stands on prints, the scales of drawings with the 1 : 2.5 and 1 : 7.5 of a drafting
 * scale between them (@source ISO-5455); `fitted` is every preferred number (@source ISO-3).
 */
export type ScaleSeries = 'standard' | 'fitted'

const mantissas = { standard: [1, 2, 2.5, 5, 7.5], fitted: [1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9] }
const jaw = { leastMm: 8, mostMm: 24 }
const bedMm = 6
const largestScale = 2.5

/** The largest scale of the series at which the views fit the paper, the slack spread between them. */
export function frameFor(shown: Shown, widthMm: number, heightMm: number, margins: Margins, views: Views, series: ScaleSeries): Frame {
  const section = views !== 'plan', plan = views !== 'section'
  const freeAcross = widthMm - margins.leftMm - margins.rightMm
  const sectionUpMm = shown.highestMm - shown.lowestMm
  const fixedUpMm = margins.topMm + margins.bottomMm + (section ? bedMm + margins.labelsMm : 0) + (plan ? 2 * margins.overhangMm : 0)
  const freeUp = Math.max(4, heightMm - fixedUpMm)
  const planUpMm = shown.over.leftMm + shown.alongMm + shown.over.rightMm
  const upMm = (section ? sectionUpMm : 0) + (plan ? planUpMm : 0)
  const acrossScale = Math.min(Math.max(4, freeAcross - 2 * jaw.leastMm) / shown.betweenMm, freeAcross / (shown.betweenMm + 2 * shown.over.sideMm))
  const scale = scaleBelow(Math.min(acrossScale, freeUp / upMm, largestScale), series)
  const partMm = shown.betweenMm * scale
  const x0 = margins.leftMm + (freeAcross - partMm) / 2
  const slack = Math.max(0, freeUp - upMm * scale)
  const bedY = margins.topMm + slack * (plan ? 0.3 : 0.5) + shown.highestMm * scale
  const sectionEndMm = section ? bedY - shown.lowestMm * scale + bedMm : margins.topMm
  const planY = sectionEndMm + (section ? margins.labelsMm : 0) + slack * (section ? 0.35 : 0.5) + margins.overhangMm + (shown.alongMm + shown.over.rightMm) * scale
  return {
    scale, views, bedMm, sectionEndMm,
    overhangMm: margins.overhangMm,
    bedPastMm: margins.bedPastMm,
    jawMm: Math.min(jaw.mostMm, Math.max(jaw.leastMm, (freeAcross - partMm) / 2)),
    inSection: (yMm, zMm) => [x0 + yMm * scale, bedY - zMm * scale],
    inPlan: (xMm, yMm) => [x0 + yMm * scale, planY - xMm * scale],
  }
}

/** `1 : 2`, `2 : 1`. */
export function scaleName(scale: number): string {
  const plain = (value: number): string => String(Math.round(value * 100) / 100)
  return scale >= 1 ? `${plain(scale)} : 1` : `1 : ${plain(1 / scale)}`
}

/** The largest scale of a series that is not above `limit`. */
export function scaleBelow(limit: number, series: ScaleSeries): number {
  // Reductions are the reciprocals of the same numbers, so that 1 : 2 and 1 : 5 are on the list.
  const power = 10 ** Math.ceil(Math.log10(limit) - 1e-9)
  const candidates = mantissas[series].flatMap((m) => (series === 'standard' && limit < 1 ? [power / m, power / 10 / m, power] : [(m * power) / 10, m * power]))
  return Math.max(...candidates.filter((scale) => scale <= limit * (1 + 1e-9)), power / 100)
}
