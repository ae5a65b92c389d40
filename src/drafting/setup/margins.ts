import type { Margins, Views } from '#drafting/setup/frame.ts'
import { letteringMm } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import { cutLettering } from '#drafting/setup/call-outs.ts'
import { airText, airOnRight, gripText } from '#drafting/setup/derived-sizes.ts'
import { labelRowMm } from '#drafting/setup/bar-labels.ts'
import type { GivenSizes } from '#drafting/setup/given-sizes.ts'
import type { SheetOptions } from '#drafting/setup/sheet-options.ts'
import type { Shown } from '#drafting/setup/shown.ts'

/** Paper left free at the very edge, and for the name of a view. */
export const edgeMm = 1.5
export const titleMm = 5
/** From the line of the height to that of what comes off the top. */
export const offTopAsideMm = 7

/** Margins, and where in them the columns of sizes stand. */
export type Columns = Margins & {
  readonly views: Views
  /** Middle of the boxes at the left edge; line and boxes at the right edge. */
  readonly leftXMm: number
  readonly rightXMm: number
  /** Left side of the boxes at the right edge. */
  readonly rightBoxesXMm: number
  /** Whether there is room for the sizes that follow: grip and air. */
  readonly derived: boolean
}

/** Least paper for the plan under the section; below it the section stands alone. */
const leastForBothMm = { spots: 125, none: 75 }
/** Paper the section itself is not squeezed below for the sake of derived sizes. */
const leastSectionMm = 36


/** What is lettered besides the sizes: labels of bars in a row under the section, sizes that follow beside it. */
export type Extras = { readonly labelRow: boolean; readonly derived: boolean }

/** What the boxes and the lettering need around the views; no room is kept for derived sizes where there is too little. */
export function columnsFor(shown: Shown, options: SheetOptions, given: GivenSizes, extras: Extras): Columns {
  const spots = options.fields !== 'none'
  const views = options.views ?? (options.heightMm >= leastForBothMm[spots ? 'spots' : 'none'] ? 'both' : 'section')
  const section = views !== 'plan', plan = views !== 'section'
  const cuts = plan && !spots ? cutLettering(shown, options.units, options.words).map(({ said }) => said.widthMm) : []
  const leftBox = Math.max(given.jaw.widthMm, ...cuts)
  const rightBox = Math.max(given.height.widthMm, plan ? given.along.widthMm : 0, given.offTop?.widthMm ?? 0)
  const aside = section && given.offTop ? (spots ? 5 : offTopAsideMm) : 0
  const air = textWidthMm(airText(shown, options), letteringMm, true), grip = textWidthMm(gripText(shown, options), letteringMm, true)
  const bare = { left: edgeMm + leftBox + 1.5, right: 1.5 + rightBox + aside + edgeMm }
  const left = section && !airOnRight(shown) ? Math.max(bare.left, air + 7) : bare.left
  const derivedMm = 8.5 + Math.max(grip, airOnRight(shown) ? air : 0)
  const derived = extras.derived && section && options.widthMm - left - bare.right - derivedMm >= leastSectionMm
  return {
    views, derived,
    leftMm: derived ? left : bare.left,
    rightMm: bare.right + (derived ? derivedMm : 0),
    leftXMm: edgeMm + leftBox / 2,
    rightXMm: options.widthMm - edgeMm - rightBox / 2 - aside,
    rightBoxesXMm: options.widthMm - edgeMm - rightBox - aside,
    topMm: section ? Math.max(edgeMm + titleMm + 5, given.offTop ? edgeMm + given.offTop.heightMm + 2.5 : 0) : edgeMm + titleMm,
    bottomMm: plan && given.between ? given.between.heightMm + 3 + edgeMm : edgeMm + 1,
    labelsMm: 5.5 + (extras.labelRow ? labelRowMm : 0),
    overhangMm: 6,
    bedPastMm: derived ? 3 : 0,
  }
}
