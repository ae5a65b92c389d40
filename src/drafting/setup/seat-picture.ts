import { boxOf, letteringMm, lineOf, shapeOf, textOf } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'

/** A bar under the part: its place in the plan, how far its top lies above the lowest one, and the gap over it; `gapUm` 0: it carries. */
export type SeatPictureBar = { readonly label: string; readonly xMm: number; readonly yMm: number; readonly thicknessMm: number; readonly lengthMm: number; readonly aboveUm: number; readonly gapUm: number; readonly gapSaid: string }

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
  readonly words: { readonly fixedJaw: string; readonly movingJaw: string; readonly loose: string; readonly carries: string; readonly leftEnd: string; readonly times: (factor: number) => string }
}

const edgeMm = 2, jawMm = 8, rowMm = 5, sectionMm = 34, gapRoomMm = 9

/**
 * The seat as it is, gaps enlarged by a factor that is stated: the section across over the bars, and the plan, left end at the
 * bottom as on every sheet, with the corners that do not touch marked by a cross and in words.
 */
export function seatPicture(data: SeatPictureData, { widthMm }: { readonly widthMm: number }): Scene {
  const scale = (widthMm - 2 * (edgeMm + jawMm)) / data.widthMm, leftMm = edgeMm + jawMm, section = sectionItems(data, leftMm, scale, widthMm), planTopMm = rowMm * 2 + sectionMm + 6
  const depthMm = Math.min(46, data.lengthMm * scale), plan = planItems(data, leftMm, planTopMm, scale, depthMm / data.lengthMm)
  return { title: data.title, description: data.description, widthMm, heightMm: planTopMm + depthMm + rowMm + 1, items: [...section, ...plan], fields: [] }
}

function sectionItems({ bars, widthMm: acrossMm, slopeUmPerMm, words }: SeatPictureData, leftMm: number, scale: number, paperMm: number): readonly Item[] {
  const planeUm = (yMm: number) => slopeUmPerMm * yMm, middle = ({ yMm, thicknessMm }: SeatPictureBar) => yMm + thicknessMm / 2
  // the plane stands so that no bar sticks out of it and each loose one has its gap
  const offsetUm = Math.max(0, ...bars.map((bar) => bar.aboveUm + bar.gapUm - planeUm(middle(bar))))
  const undersideUm = (yMm: number) => offsetUm + planeUm(yMm), mostUm = Math.max(undersideUm(0), undersideUm(acrossMm), ...bars.map(({ aboveUm }) => aboveUm), 1e-3)
  const leastUm = Math.min(0, undersideUm(0), undersideUm(acrossMm)), factor = roundDown((gapRoomMm * 1000) / ((mostUm - leastUm) * scale)), paper = (um: number) => (um * factor * scale) / 1000
  const baseMm = 2 * rowMm + sectionMm, levelMm = baseMm - 14, yOf = (um: number) => levelMm - paper(um), xOf = (yMm: number) => leftMm + yMm * scale, topMm = 2 * rowMm + 2
  const under: readonly Point[] = [[xOf(0), yOf(undersideUm(0))], [xOf(acrossMm), yOf(undersideUm(acrossMm))]]
  return [
    textOf([edgeMm, rowMm / 2], words.times(factor), { tone: 'thin' }),
    textOf([edgeMm, rowMm * 1.5], words.fixedJaw, { tone: 'thin' }), textOf([paperMm - edgeMm, rowMm * 1.5], words.movingJaw, { tone: 'thin', anchor: 'end' }),
    boxOf([edgeMm, topMm + 4], [leftMm, baseMm], 'outline', 'cut-face'), boxOf([xOf(acrossMm), topMm + 4], [xOf(acrossMm) + jawMm, baseMm], 'outline', 'cut-face'),
    shapeOf([[xOf(0), topMm], [xOf(acrossMm), topMm], ...under.toReversed()], 'outline', 'sheet'),
    ...bars.map((bar) => boxOf([xOf(bar.yMm), yOf(bar.aboveUm)], [xOf(bar.yMm + bar.thicknessMm), baseMm], 'bar', 'bar')),
    lineOf([edgeMm, baseMm], [xOf(acrossMm) + jawMm, baseMm], 'outline'),
    ...bars.flatMap((bar): readonly Item[] => barSaid(bar, words, xOf(middle(bar)), yOf(undersideUm(middle(bar))), leftMm, xOf(acrossMm), baseMm - 4)),
  ]
}

/** What a bar does, above it inside the part; and its name at its foot where the bar is wide enough, else beside it. */
function barSaid({ label, gapUm, gapSaid }: SeatPictureBar, words: SeatPictureData['words'], x: number, underMm: number, leftMm: number, rightMm: number, footMm: number): readonly Item[] {
  const inFixedHalf = x < (leftMm + rightMm) / 2, at = inFixedHalf ? leftMm + 2 : rightMm - 2, anchor = inFixedHalf ? 'start' : 'end', said = gapUm > 0 ? `${words.loose} ${gapSaid}` : words.carries
  const barEdge = inFixedHalf ? Math.max(x, leftMm) + 1 : x - 1
  return [
    textOf([at, underMm - 5], said, { anchor, bold: gapUm > 0, tone: gapUm > 0 ? 'danger' : 'ink' }),
    textOf([inFixedHalf ? Math.max(barEdge + 6, leftMm + 12) : Math.min(barEdge - 6, rightMm - 12), footMm], label, { anchor, sizeMm: letteringMm }),
  ]
}

function planItems({ bars, lengthMm, widthMm, loose, words }: SeatPictureData, leftMm: number, topMm: number, across: number, along: number): readonly Item[] {
  const xOf = (yMm: number) => leftMm + yMm * across, endMm = topMm + lengthMm * along, yOf = (xMm: number) => endMm - xMm * along, inside = (xMm: number) => Math.min(lengthMm, Math.max(0, xMm))
  return [
    boxOf([xOf(0), yOf(0)], [xOf(widthMm), yOf(lengthMm)], 'outline', 'none'),
    ...bars.map((bar) => boxOf([xOf(bar.yMm), yOf(inside(bar.xMm))], [xOf(bar.yMm + bar.thicknessMm), yOf(inside(bar.xMm + bar.lengthMm))], 'hidden', 'bar')),
    ...loose.flatMap(({ along: end, across: side, said }): readonly Item[] => {
      const x = xOf(side * widthMm), y = yOf(end * lengthMm), inX = side === 0 ? 1 : -1, inY = end === 0 ? -1 : 1, cx = x + inX * 4, cy = y + inY * 4, text = `${words.loose} ${said}`
      const own = bars.filter(({ yMm, thicknessMm }) => (yMm + thicknessMm / 2 < widthMm / 2) === (side === 0)), clear = side === 0 ? Math.max(x + 8, ...own.map((bar) => xOf(bar.yMm + bar.thicknessMm) + 2)) : Math.min(x - 8, ...own.map((bar) => xOf(bar.yMm) - 2))
      const room = Math.abs(xOf(widthMm / 2) - clear) - 1, shown = textWidthMm(text, letteringMm, true) <= room ? text : said
      return [
        lineOf([cx - 2.2, cy - 2.2], [cx + 2.2, cy + 2.2], 'danger'), lineOf([cx - 2.2, cy + 2.2], [cx + 2.2, cy - 2.2], 'danger'),
        textOf([clear, cy], shown, { anchor: side === 0 ? 'start' : 'end', bold: true, tone: 'danger' }),
      ]
    }),
    textOf([xOf(widthMm / 2), endMm + rowMm / 2 + 0.5], words.leftEnd, { tone: 'thin', anchor: 'middle' }),
  ]
}

/** The next round factor below: 1, 2 or 5 with noughts. */
function roundDown(factor: number): number {
  const tens = 10 ** Math.floor(Math.log10(factor))
  return tens * (factor >= 5 * tens ? 5 : factor >= 2 * tens ? 2 : 1)
}
