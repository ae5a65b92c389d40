import { boxOf, lineOf, pathOf, textOf } from '#drafting/items.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'

export type ChuckSide = 'left' | 'right' | 'front' | 'back'

/** A part blocked in on a magnetic chuck, from above and from the side; bars lie flat. */
export type ChuckPictureData = {
  readonly title: string
  readonly description: string
  readonly acrossMm: number
  readonly alongMm: number
  readonly heightMm: number
  /** How high the bars stand, and how far they reach away from the part. */
  readonly barUpMm: number
  readonly barWideMm: number
  /** Sides in the order in which they are covered. */
  readonly order: readonly ChuckSide[]
  readonly travel: 'along' | 'across'
  readonly travels: string
  readonly chuck: string
}

const edgeMm = 5, chuckMm = 8, apartMm = 8

/** Along level, across upright: the part as it lies before one at the grinder. Poles run across. */
export function chuckPicture(data: ChuckPictureData, { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }): Scene {
  const wide = data.alongMm + 2 * data.barWideMm, deep = data.acrossMm + 2 * data.barWideMm
  const scale = Math.min((widthMm - 2 * edgeMm - 6) / wide, (heightMm - 2 * edgeMm - 2 * apartMm - chuckMm - 6) / (deep + data.heightMm))
  const x0 = (widthMm - data.alongMm * scale) / 2, bar = data.barWideMm * scale, x1 = x0 + data.alongMm * scale, tops = data.heightMm * scale
  const chuckY = edgeMm + 4 + tops, planTop = chuckY + chuckMm + apartMm, y0 = planTop + bar, y1 = y0 + data.acrossMm * scale
  return {
    title: data.title, description: data.description, widthMm, heightMm: y1 + bar + apartMm + 4, fields: [],
    items: [
      boxOf([2, chuckY], [widthMm - 2, chuckY + chuckMm], 'none', 'cut-face-back'), lineOf([2, chuckY], [widthMm - 2, chuckY], 'outline'),
      boxOf([widthMm / 2 - 23, chuckY + 1.2], [widthMm / 2 + 23, chuckY + chuckMm - 1.2], 'none', 'sheet'), textOf([widthMm / 2, chuckY + chuckMm / 2], data.chuck, { anchor: 'middle' }),
      boxOf([x0, chuckY - tops], [x1, chuckY], 'outline', 'cut-face'),
      ...[x0 - bar, x1].map((x) => boxOf([x, chuckY - data.barUpMm * scale], [x + bar, chuckY], 'bar', 'bar')),
      ...poles(2, widthMm - 2, planTop - 3, y1 + bar + 3),
      boxOf([x0, y0], [x1, y1], 'outline', 'sheet'),
      ...data.order.flatMap((side, k) => barAt(side, k + 1, { x0, x1, y0, y1, bar })),
      ...arrow(data.travel, [(x0 + x1) / 2, (y0 + y1) / 2], Math.min(14, (x1 - x0) / 4, (y1 - y0) / 3.2)),
      textOf([widthMm / 2, y1 + bar + apartMm], data.travels, { anchor: 'middle', tone: 'thin' }),
    ],
  }
}

const poleEveryMm = 9

function poles(from: number, to: number, top: number, bottom: number): readonly Item[] {
  return Array.from({ length: Math.floor((to - from) / poleEveryMm) + 1 }, (_, k) => lineOf([from + k * poleEveryMm, top], [from + k * poleEveryMm, bottom], 'rule'))
}

/** A bar at its side, with the place it has in the order. */
function barAt(side: ChuckSide, place: number, { x0, x1, y0, y1, bar }: { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number; readonly bar: number }): readonly Item[] {
  const [a, b]: readonly [Point, Point] = side === 'left' ? [[x0 - bar, y0], [x0, y1]] : side === 'right' ? [[x1, y0], [x1 + bar, y1]] : side === 'front' ? [[x0, y1], [x1, y1 + bar]] : [[x0, y0 - bar], [x1, y0]]
  return [boxOf(a, b, 'bar', 'bar'), textOf([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], String(place), { anchor: 'middle', bold: true, sizeMm: 4.6 })]
}

function arrow(travel: 'along' | 'across', [x, y]: Point, half: number): readonly Item[] {
  const at = (along: number, off: number): Point => (travel === 'along' ? [x + along, y + off] : [x + off, y + along])
  const headed = (end: 1 | -1): Item => pathOf([at(end * (half - 2.4), -1.2), at(end * half, 0), at(end * (half - 2.4), 1.2)], 'outline')
  return [lineOf(at(-half, 0), at(half, 0), 'outline'), headed(1), headed(-1)]
}
