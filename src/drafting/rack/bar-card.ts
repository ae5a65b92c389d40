import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { boxOf, lineOf, pathOf, shapeOf, textOf } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'
import { extension, fitsInLine, lettered, level, upright } from '#drafting/setup/said.ts'

export type BarCardData = {
  readonly title: string
  readonly description: string
  /** What is written on it. */
  readonly label: string
  readonly heightMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
  /** Name of the end from which stations are counted: `marked end`. */
  readonly markedEnd: string
}

const edgeMm = 2
/** Under the views for the sizes, over them for the name of the end. */
const underMm = 13
const overMm = 7
const apartMm = 14
const largestScale = 2
/** A bar is drawn whole as long as its side comes out this high, and cut in its length below that. */
const leastUpMm = 8

/**
 * One bar on edge from the side and, in section, from its end, with its three sizes.
 *
 * As large as the paper allows, which is then as high as it is needed. A bar that would come out too low to see is drawn larger and its length cut with break
 * lines; the size of the length is still the whole one.
 */
export function barDrawing(bar: BarCardData, { widthMm, heightMm, units }: { readonly widthMm: number; readonly heightMm: number; readonly units: Units }): Scene & { readonly scale: number } {
  const size = (name: string, mm: number) => lettered(name, [wordLength(mm, units)])
  const height = size('height', bar.heightMm)
  const free = widthMm - 2 * edgeMm - apartMm - 4 - height.widthMm
  const most = Math.min(largestScale, (heightMm - overMm - underMm - 2 * edgeMm) / bar.heightMm, (free * 0.4) / bar.thicknessMm)
  const whole = Math.min(most, free / (bar.lengthMm + bar.thicknessMm))
  const scale = bar.heightMm * whole >= leastUpMm ? whole : most
  const thickMm = bar.thicknessMm * scale, upMm = bar.heightMm * scale, longMm = Math.min(bar.lengthMm * scale, free - thickMm)
  const left = edgeMm, top = edgeMm + overMm, bottom = top + upMm, endLeft = left + longMm + apartMm
  const sizeX = endLeft + thickMm + 4 + height.widthMm / 2
  return {
    title: bar.title, description: bar.description, widthMm, heightMm: bottom + underMm, fields: [], scale,
    items: [
      ...sideView(bar, [left, top], longMm, upMm, longMm < bar.lengthMm * scale - 1e-6),
      boxOf([endLeft, top], [endLeft + thickMm, bottom], 'bar', 'cut-face'),
      ...markedEnd(bar, left, top),
      extension([endLeft + thickMm, top], [sizeX + 1.5, top]), extension([endLeft + thickMm, bottom], [sizeX + 1.5, bottom]),
      ...upright(sizeX, top, bottom, height, [sizeX, fitsInLine(upMm, height.heightMm) ? (top + bottom) / 2 : bottom + 5]),
      ...below(left, left + longMm, bottom, size('length', bar.lengthMm)),
      ...below(endLeft, endLeft + thickMm, bottom, size('thickness', bar.thicknessMm)),
    ],
  }
}

function sideView(bar: BarCardData, [x, y]: Point, longMm: number, upMm: number, cut: boolean): readonly Item[] {
  const said = textOf([x + longMm * (cut ? 0.25 : 0.5), y + upMm / 2], bar.label, { anchor: 'middle', bold: true, tone: 'bar' })
  const label = upMm >= 4.4 && textWidthMm(bar.label, said.sizeMm, true) < longMm * 0.45 ? [said] : []
  if (!cut) return [boxOf([x, y], [x + longMm, y + upMm], 'bar', 'bar'), ...label]
  const middle = x + longMm / 2, gap = 1.6
  const broken = (at: number): readonly Point[] => [[at, y - 1.2], [at, y + upMm * 0.4], [at - 1, y + upMm * 0.45], [at + 1, y + upMm * 0.55], [at, y + upMm * 0.6], [at, y + upMm + 1.2]]
  return [
    ...[[x, middle - gap], [middle + gap, x + longMm]].flatMap(([from, to]): readonly Item[] => [
      shapeOf([[from!, y], [to!, y], [to!, y + upMm], [from!, y + upMm]], 'none', 'bar'),
      lineOf([from!, y], [to!, y], 'bar'), lineOf([from!, y + upMm], [to!, y + upMm], 'bar'),
    ]),
    lineOf([x, y], [x, y + upMm], 'bar'), lineOf([x + longMm, y], [x + longMm, y + upMm], 'bar'),
    pathOf(broken(middle - gap), 'thin'), pathOf(broken(middle + gap), 'thin'),
    ...label,
  ]
}

/** A small solid triangle on the upper edge at the marked end, and its name above. */
function markedEnd(bar: BarCardData, left: number, top: number): readonly Item[] {
  return [
    shapeOf([[left, top], [left, top + 3], [left + 3, top]], 'bar', 'bar'),
    textOf([left, top - 3.4], bar.markedEnd, { tone: 'thin' }),
  ]
}

function below(left: number, right: number, bottom: number, said: ReturnType<typeof lettered>): readonly Item[] {
  const inLine = fitsInLine(right - left, said.widthMm), y = bottom + 5
  return [
    extension([left, bottom], [left, y + 1.5]), extension([right, bottom], [right, y + 1.5]),
    ...level(y, left, right, said, [(left + right) / 2, inLine ? y : y + 4.2]),
  ]
}
