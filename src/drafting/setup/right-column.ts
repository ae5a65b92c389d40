import { arrowhead } from '#drafting/dimension.ts'
import { letteringMm, pathOf, textOf } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import type { FieldSpot, Item } from '#drafting/scene.ts'
import { type Stop, stackedUp } from '#drafting/stack-up.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import type { GivenSizes } from '#drafting/setup/given-sizes.ts'
import { type Columns, edgeMm, offTopAsideMm } from '#drafting/setup/margins.ts'
import { extension, fitsInLine, type Said, seenMm, spotFor, upright } from '#drafting/setup/said.ts'
import type { SheetOptions } from '#drafting/setup/sheet-options.ts'
import type { Shown } from '#drafting/setup/shown.ts'

type Drawn = { readonly items: readonly Item[]; readonly fields: readonly FieldSpot[] }

/** Where a size stands on the paper: its line from top to bottom, its box, and where the box would like to be. */
type Size = {
  readonly said: Said
  readonly xMm: number
  readonly boxXMm: number
  readonly topMm: number
  readonly bottomMm: number
  readonly preferMm: number
  readonly belowMm: number
}

/** Down the right edge: what comes off the top, the part's height, its length along. */
export function rightColumn(shown: Shown, frame: Frame, options: SheetOptions, given: GivenSizes, columns: Columns): Drawn {
  const height = columns.views === 'plan' ? [] : [sizeOf(given.height, columns.rightXMm, ...heightSpan(shown, frame))]
  const along = columns.views === 'section' ? [] : [sizeOf(given.along, columns.rightXMm, frame.inPlan(shown.alongMm, 0)[1], frame.inPlan(0, 0)[1])]
  const offTop = columns.views === 'plan' || !given.offTop ? [] : [offTopSize(given.offTop, shown, frame, options, columns)]
  const sizes = [...offTop, ...height, ...along]
  const middles = stood(sizes, options.heightMm)
  return {
    items: [
      ...extensions(shown, frame, columns, offTop.length > 0),
      ...sizes.flatMap((size, index) => lineFor(size, middles[index]!)),
      ...(columns.views === 'section' ? [] : leftEnd(shown, frame, options, columns)),
    ],
    fields: sizes.flatMap((size, index) => spotFor(size.said, [size.boxXMm, middles[index]!])),
  }
}

function heightSpan({ seatMm, heightMm }: Shown, { inSection }: Frame): readonly [number, number] {
  return [inSection(0, seatMm + heightMm)[1], inSection(0, seatMm)[1]]
}

function sizeOf(said: Said, xMm: number, topMm: number, bottomMm: number): Size {
  const belowMm = bottomMm + 2.5 + said.heightMm / 2
  return { said, xMm, boxXMm: xMm, topMm, bottomMm, belowMm, preferMm: fitsInLine(bottomMm - topMm, seenMm(said)) ? (topMm + bottomMm) / 2 : belowMm }
}

function offTopSize(said: Said, shown: Shown, frame: Frame, options: SheetOptions, columns: Columns): Size {
  const topMm = heightSpan(shown, frame)[0], xMm = columns.rightXMm + offTopAsideMm
  const preferMm = topMm - 2.5 - said.heightMm / 2
  return { said, xMm, boxXMm: Math.min(xMm, options.widthMm - edgeMm - said.widthMm / 2), topMm, bottomMm: topMm + shown.faceMm * frame.scale, preferMm, belowMm: preferMm }
}

/** Boxes one below the other; a box pushed out of its line by the one above goes below that line. */
function stood(sizes: readonly Size[], paperMm: number): readonly number[] {
  const stops = (prefers: readonly number[]): readonly Stop[] => sizes.map(({ said }, index) => ({ preferMm: prefers[index]!, sizeMm: said.heightMm }))
  const wished = sizes.map(({ preferMm }) => preferMm)
  const first = stackedUp(stops(wished), edgeMm, paperMm - edgeMm)
  const astride = sizes.map(({ said, topMm, bottomMm }, index) => {
    const half = seenMm(said) / 2, middle = first[index]!
    return middle + half > bottomMm && middle - half < bottomMm && middle - half >= topMm - half
  })
  return astride.some((yes) => yes) ? stackedUp(stops(sizes.map((size, index) => (astride[index] ? size.belowMm : wished[index]!))), edgeMm, paperMm - edgeMm) : first
}

/** With nothing off the top the line is only an arrow down to it. */
function lineFor({ said, xMm, boxXMm, topMm, bottomMm }: Size, middle: number): readonly Item[] {
  if (bottomMm - topMm > 1e-6) return upright(xMm, topMm, bottomMm, said, [boxXMm, middle])
  const fromMm = Math.min(middle + seenMm(said) / 2, topMm - 2.5)
  return [extension([xMm, fromMm], [xMm, topMm]), pathOf(arrowhead([xMm, topMm], [xMm, topMm - 5]), 'thin')]
}

function extensions(shown: Shown, frame: Frame, columns: Columns, offTop: boolean): readonly Item[] {
  const { betweenMm, alongMm, faceMm, overJawMm, picture } = shown, reach = columns.rightXMm + 1.5, far = reach + (offTop ? offTopAsideMm : 0)
  const sideX = frame.inSection(betweenMm, 0)[0], middleX = frame.inSection(betweenMm / 2, 0)[0]
  const [top, bottom] = heightSpan(shown, frame), fromX = picture.shape === 'round' ? middleX : sideX
  const section = [
    extension([fromX, top], [far, top]), extension([fromX, bottom], [reach, bottom]),
    ...(offTop && faceMm > 0 ? [extension([overJawMm === faceMm ? sideX + frame.jawMm : sideX, top + faceMm * frame.scale], [far, top + faceMm * frame.scale])] : []),
  ]
  const plan = [0, alongMm].map((xMm) => extension([sideX, frame.inPlan(xMm, 0)[1]], [reach, frame.inPlan(xMm, 0)[1]]))
  return [...(columns.views === 'plan' ? [] : section), ...(columns.views === 'section' ? [] : plan)]
}

/** From where the distances along are counted: said beside the plan where it fits between the jaw and the line of the length. */
function leftEnd({ betweenMm, alongMm }: Shown, { inPlan, jawMm, scale }: Frame, { words }: SheetOptions, { rightBoxesXMm }: Columns): readonly Item[] {
  const [sideX, y] = inPlan(0, betweenMm), fromX = sideX + jawMm + 1.5
  const fits = textWidthMm(words.leftEnd, letteringMm) <= rightBoxesXMm - 1 - fromX && alongMm * scale > 12
  return fits ? [textOf([fromX, y - 2.6], words.leftEnd, { tone: 'thin' })] : []
}
