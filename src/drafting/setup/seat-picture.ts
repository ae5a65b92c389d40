import { boxOf, letteringMm, lineOf, shapeOf, textOf } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'

/** A bar under the part: its place in the plan, how far its top lies above the lowest one, and the gap over it; `gapUm` 0: it carries. */
export type SeatPictureBar = {
  readonly label: string
  readonly xMm: number
  readonly yMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
  readonly aboveUm: number
  readonly gapUm: number
  readonly gapSaid: string
}

export type SeatPictureData = {
  readonly title: string
  readonly description: string
  readonly lengthMm: number
  readonly widthMm: number
  readonly bars: readonly SeatPictureBar[]
  /** Of the underside, rising from the fixed jaw. */
  readonly slopeUmPerMm: number
  /** Corners that do not touch, as shares of length and width, each with what is said there. */
  readonly loose: readonly { readonly along: 0 | 1; readonly across: 0 | 1; readonly said: string }[]
  readonly words: {
    readonly fixedJaw: string; readonly movingJaw: string; readonly leftEnd: string
    readonly loose: string; readonly carries: string; readonly times: (factor: number) => string
  }
}

const edgeMm = 2, jawMm = 8, rowMm = 5, sectionMm = 34, gapRoomMm = 9

/**
 * The seat as it is, gaps enlarged by a factor that is stated: the section across over the bars, and the plan, left end at the
 * bottom as on every sheet, with the corners that do not touch marked by a cross and in words.
 */
export function seatPicture(data: SeatPictureData, { widthMm }: { readonly widthMm: number }): Scene {
  const leftMm = edgeMm + jawMm, scale = (widthMm - 2 * leftMm) / data.widthMm, planTopMm = rowMm * 2 + sectionMm + 6, depthMm = Math.min(46, data.lengthMm * scale)
  const section = sectionItems(data, leftMm, scale, widthMm), plan = planItems(data, leftMm, planTopMm, scale, depthMm / data.lengthMm)
  return { title: data.title, description: data.description, widthMm, heightMm: planTopMm + depthMm + rowMm + 1, items: [...section, ...plan], fields: [] }
}

function sectionItems({ bars, widthMm: acrossMm, slopeUmPerMm, words }: SeatPictureData, leftMm: number, scale: number, paperMm: number): readonly Item[] {
  const planeUm = (yMm: number) => slopeUmPerMm * yMm, middle = ({ yMm, thicknessMm }: SeatPictureBar) => yMm + thicknessMm / 2
  // the plane stands so that no bar sticks out of it and each loose one has its gap
  const offsetUm = Math.max(0, ...bars.map((bar) => bar.aboveUm + bar.gapUm - planeUm(middle(bar))))
  const undersideUm = (yMm: number) => offsetUm + planeUm(yMm), endsUm = [undersideUm(0), undersideUm(acrossMm)]
  const mostUm = Math.max(...endsUm, ...bars.map(({ aboveUm }) => aboveUm), 1e-3), leastUm = Math.min(0, ...endsUm)
  const factor = roundDown((gapRoomMm * 1000) / ((mostUm - leastUm) * scale)), topMm = 2 * rowMm + 2, baseMm = 2 * rowMm + sectionMm, levelMm = baseMm - 14
  const xOf = (yMm: number) => leftMm + yMm * scale, yOf = (um: number) => levelMm - (um * factor * scale) / 1000
  const under: readonly Point[] = [[xOf(0), yOf(undersideUm(0))], [xOf(acrossMm), yOf(undersideUm(acrossMm))]]
  return [
    textOf([edgeMm, rowMm / 2], words.times(factor), { tone: 'thin' }),
    textOf([edgeMm, rowMm * 1.5], words.fixedJaw, { tone: 'thin' }), textOf([paperMm - edgeMm, rowMm * 1.5], words.movingJaw, { tone: 'thin', anchor: 'end' }),
    boxOf([edgeMm, topMm + 4], [leftMm, baseMm], 'outline', 'cut-face'), boxOf([xOf(acrossMm), topMm + 4], [xOf(acrossMm) + jawMm, baseMm], 'outline', 'cut-face'),
    shapeOf([[xOf(0), topMm], [xOf(acrossMm), topMm], ...under.toReversed()], 'outline', 'sheet'),
    ...bars.map((bar) => boxOf([xOf(bar.yMm), yOf(bar.aboveUm)], [xOf(bar.yMm + bar.thicknessMm), baseMm], 'bar', 'bar')),
    lineOf([edgeMm, baseMm], [xOf(acrossMm) + jawMm, baseMm], 'outline'),
    ...bars.flatMap((bar) => barSaid(bar, words, { x: xOf(middle(bar)), underMm: yOf(undersideUm(middle(bar))), leftMm, rightMm: xOf(acrossMm), footMm: baseMm - 4 })),
  ]
}

/** Where a bar stands on the paper: its middle, the part's underside over it, the part's two ends, and where its name stands. */
type BarRoom = { readonly x: number; readonly underMm: number; readonly leftMm: number; readonly rightMm: number; readonly footMm: number }

/** What a bar does, above it inside the part; and its name at its foot where the bar is wide enough, else beside it. */
function barSaid({ label, gapUm, gapSaid }: SeatPictureBar, words: SeatPictureData['words'], { x, underMm, leftMm, rightMm, footMm }: BarRoom): readonly Item[] {
  const inFixedHalf = x < (leftMm + rightMm) / 2, isLoose = gapUm > 0, anchor = inFixedHalf ? 'start' : 'end'
  const saidAt = inFixedHalf ? leftMm + 2 : rightMm - 2, nameAt = inFixedHalf ? Math.max(x + 7, leftMm + 12) : Math.min(x - 7, rightMm - 12)
  return [
    textOf([saidAt, underMm - 5], isLoose ? `${words.loose} ${gapSaid}` : words.carries, { anchor, bold: isLoose, tone: isLoose ? 'danger' : 'ink' }),
    textOf([nameAt, footMm], label, { anchor, sizeMm: letteringMm }),
  ]
}

function planItems({ bars, lengthMm, widthMm, loose, words }: SeatPictureData, leftMm: number, topMm: number, across: number, along: number): readonly Item[] {
  const endMm = topMm + lengthMm * along, xOf = (yMm: number) => leftMm + yMm * across, yOf = (xMm: number) => endMm - xMm * along
  const inside = (xMm: number) => Math.min(lengthMm, Math.max(0, xMm)), middleMm = widthMm / 2
  /** Clear of the bars of that half, so that what is said of a corner crosses none. */
  const clearOf = (side: 0 | 1, x: number) => {
    const own = bars.filter(({ yMm, thicknessMm }) => (yMm + thicknessMm / 2 < middleMm) === (side === 0))
    return side === 0 ? Math.max(x + 8, ...own.map((bar) => xOf(bar.yMm + bar.thicknessMm) + 2)) : Math.min(x - 8, ...own.map((bar) => xOf(bar.yMm) - 2))
  }
  return [
    boxOf([xOf(0), yOf(0)], [xOf(widthMm), yOf(lengthMm)], 'outline', 'none'),
    ...bars.map((bar) => boxOf([xOf(bar.yMm), yOf(inside(bar.xMm))], [xOf(bar.yMm + bar.thicknessMm), yOf(inside(bar.xMm + bar.lengthMm))], 'hidden', 'bar')),
    ...loose.flatMap(({ along: end, across: side, said }): readonly Item[] => {
      const x = xOf(side * widthMm), cx = side === 0 ? x + 4 : x - 4, cy = yOf(end * lengthMm) + (end === 0 ? -4 : 4), clear = clearOf(side, x)
      const text = `${words.loose} ${said}`, room = Math.abs(xOf(middleMm) - clear) - 1, shown = textWidthMm(text, letteringMm, true) <= room ? text : said
      return [
        lineOf([cx - 2.2, cy - 2.2], [cx + 2.2, cy + 2.2], 'danger'), lineOf([cx - 2.2, cy + 2.2], [cx + 2.2, cy - 2.2], 'danger'),
        textOf([clear, cy], shown, { anchor: side === 0 ? 'start' : 'end', bold: true, tone: 'danger' }),
      ]
    }),
    textOf([xOf(middleMm), endMm + rowMm / 2 + 0.5], words.leftEnd, { tone: 'thin', anchor: 'middle' }),
  ]
}

/** The next round factor below: 1, 2 or 5 with noughts. */
function roundDown(factor: number): number {
  const tens = 10 ** Math.floor(Math.log10(factor))
  return tens * (factor >= 5 * tens ? 5 : factor >= 2 * tens ? 2 : 1)
}
