import type { Hole, MilledCut } from '#model/cut.ts'
import type { Rect } from '#model/part.ts'
import type { Place } from '#model/setup.ts'
import { holeDepths } from '#drafting/setup/hole-shape.ts'
import type { PictureBar, SetupPicture } from '#drafting/setup/picture.ts'

export type ShownBar = Omit<PictureBar, 'place'> & { readonly place: Place }

/** A picture with every open size filled in for drawing alone, and the heights above the bed that the drawing needs. */
export type Shown = {
  readonly picture: SetupPicture
  readonly betweenMm: number
  readonly alongMm: number
  readonly heightMm: number
  readonly seatMm: number
  /** A size that this view shows is not known: the part is drawn as open. */
  readonly openInSection: boolean
  readonly openInPlan: boolean
  readonly bars: readonly ShownBar[]
  readonly milled: readonly MilledCut[]
  readonly holes: readonly Hole[]
  /** Depth below the raw top that is milled off everywhere, and of the deepest cut over a jaw (null without one). */
  readonly faceMm: number
  readonly overJawMm: number | null
  /** Lowest thing that comes out below, above the bed; negative where it goes into it. */
  readonly lowestMm: number
  readonly highestMm: number
  /** How far holes reach over the part: past its left end, its right end, and either jaw. */
  readonly over: { readonly leftMm: number; readonly rightMm: number; readonly sideMm: number }
}

/** Sizes to draw where none is given, in mm; they mean nothing. */
const nominal = { betweenMm: 40, alongMm: 60, heightMm: 20, gripMm: 10 }

export function shownOf(picture: SetupPicture): Shown {
  const round = picture.shape === 'round'
  const across = round ? picture.betweenJawsMm ?? picture.heightMm : picture.betweenJawsMm
  const height = round ? picture.heightMm ?? picture.betweenJawsMm : picture.heightMm
  const widest = picture.bars.reduce((sum, bar) => (bar.fromMm === 0 ? sum + bar.acrossMm : sum), 0)
  const betweenMm = across ?? Math.max(nominal.betweenMm, widest * 1.3)
  const alongMm = picture.alongJawsMm ?? nominal.alongMm
  const heightMm = height ?? nominal.heightMm
  const lowerJawMm = Math.min(picture.fixedJawHeightMm, picture.movingJawHeightMm)
  const seatMm = picture.seatMm ?? Math.max(0, lowerJawMm - Math.min(nominal.gripMm, heightMm * 0.6))
  const cuts = picture.cuts.filter((cut) => cut !== null)
  const milled = cuts.filter((cut): cut is MilledCut => cut.kind !== 'hole' && cut.kind !== 'end')
  const holes = cuts.filter((cut) => cut.kind === 'hole')
  const overJaw = milled.filter((cut) => cut.overJaw)
  const faceMm = Math.max(0, ...milled.filter((cut) => cut.kind === 'face' && !cut.rect).map((cut) => cut.depthMm))
  const lowest = [0, ...holes.map((hole) => seatMm + holeDepths(hole, heightMm).tipMm), ...milled.filter((cut) => cutsThrough(cut, heightMm)).map((cut) => seatMm - cut.runThroughMm)]
  return {
    picture, betweenMm, alongMm, heightMm, seatMm, milled, holes, faceMm,
    openInSection: across === null || height === null || picture.seatMm === null,
    openInPlan: across === null || picture.alongJawsMm === null,
    bars: picture.bars.map((bar, index) => ({ ...bar, place: bar.place ?? plainPlace(picture.bars, index, betweenMm, alongMm) })),
    overJawMm: overJaw.length === 0 ? null : Math.max(...overJaw.map((cut) => cut.depthMm)),
    lowestMm: Math.min(...lowest),
    over: {
      leftMm: Math.max(0, ...holes.map((hole) => hole.diameterMm / 2 - (hole.xMm ?? Infinity))),
      rightMm: Math.max(0, ...holes.map((hole) => (hole.xMm ?? -Infinity) + hole.diameterMm / 2 - alongMm)),
      sideMm: Math.max(0, ...holes.map((hole) => hole.diameterMm / 2 - Math.min(hole.yMm, betweenMm - hole.yMm))),
    },
    highestMm: Math.max(picture.fixedJawHeightMm, picture.movingJawHeightMm, seatMm + heightMm),
  }
}

/** A milled cut that comes out below the part, its run-through counted. */
export function cutsThrough(cut: MilledCut, heightMm: number): boolean {
  return cut.depthMm + cut.runThroughMm > heightMm + 1e-6
}

/** A cut that runs over the whole length of the part, so that its shape is seen from the end. */
export function runsFullLength(rect: Rect, alongMm: number): boolean {
  return rect.x0Mm <= 1e-6 && rect.x1Mm >= alongMm - 1e-6
}

function plainPlace(bars: readonly PictureBar[], index: number, betweenMm: number, alongMm: number): Place {
  const bar = bars[index]!
  const xMm = (alongMm - bar.lengthMm) / 2
  if (bars.length === 1) return { xMm, yMm: (betweenMm - bar.acrossMm) / 2 }
  return { xMm, yMm: index % 2 === 0 ? 0 : betweenMm - bar.acrossMm }
}
