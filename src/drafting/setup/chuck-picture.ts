import { boxOf, letteringMm, lineOf, pathOf, textOf } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import type { Item, Point } from '#drafting/scene.ts'
import { type PictureRoom, type ScaledScene, scaleIn } from '#drafting/setup/scaled-piece.ts'

export type ChuckSide = 'left' | 'right' | 'front' | 'back'

/** A bar lying flat against one side of the part. */
export type ChuckBar = {
  readonly side: ChuckSide
  readonly longMm: number
  /** How far it reaches away from the part, and how high it stands. */
  readonly wideMm: number
  readonly upMm: number
  /** Drawn where it has room, beside its place in the order. */
  readonly called: string
}

/** A part blocked in on a magnetic chuck, from the side and from above. */
export type ChuckPictureData = {
  readonly title: string
  readonly description: string
  readonly acrossMm: number
  readonly alongMm: number
  readonly heightMm: number
  /** In the order in which the sides are covered. */
  readonly bars: readonly ChuckBar[]
  readonly travel: 'along' | 'across'
  readonly travels: string
  readonly chuck: string
}

const edgeMm = 5, chuckMm = 8, apartMm = 8

type Box = { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number }

/** Along level, across upright: the part as it lies before one at the grinder. Poles run across. A bar longer than its side runs on past one corner, so that all four lie close. */
export function chuckPicture(data: ChuckPictureData, room: PictureRoom): ScaledScene {
  const { widthMm, heightMm } = room, { bars, alongMm, acrossMm } = data
  const lie = bars.map((bar) => ({ bar, box: placed(bar, alongMm, acrossMm) }))
  const whole = around([{ x0: 0, y0: 0, x1: alongMm, y1: acrossMm }, ...lie.map(({ box }) => box)]), longMm = whole.x1 - whole.x0, deepMm = whole.y1 - whole.y0
  const scale = scaleIn(room, Math.min((widthMm - 2 * edgeMm - 6) / longMm, (heightMm - 2 * edgeMm - 2 * apartMm - chuckMm - 6) / (deepMm + data.heightMm)))
  const left = (widthMm - longMm * scale) / 2, chuckY = edgeMm + 4 + data.heightMm * scale, planTop = chuckY + chuckMm + apartMm, planBottom = planTop + deepMm * scale
  const x = (mm: number): number => left + (mm - whole.x0) * scale, up = (mm: number): number => chuckY - mm * scale
  const inPlan = (xMm: number, yMm: number): Point => [x(xMm), planBottom - (yMm - whole.y0) * scale]
  return {
    title: data.title, description: data.description, widthMm, heightMm: planBottom + apartMm + 4, fields: [], scale,
    items: [
      boxOf([2, chuckY], [widthMm - 2, chuckY + chuckMm], 'none', 'cut-face-back'), lineOf([2, chuckY], [widthMm - 2, chuckY], 'outline'),
      boxOf([widthMm / 2 - 23, chuckY + 1.2], [widthMm / 2 + 23, chuckY + chuckMm - 1.2], 'none', 'sheet'),
      textOf([widthMm / 2, chuckY + chuckMm / 2], data.chuck, { anchor: 'middle' }),
      boxOf([x(0), up(data.heightMm)], [x(alongMm), chuckY], 'outline', 'cut-face'),
      ...lie.filter(({ bar: { side } }) => side === 'left' || side === 'right').map(({ bar, box }) => boxOf([x(box.x0), up(bar.upMm)], [x(box.x1), chuckY], 'bar', 'bar')),
      ...poles(2, widthMm - 2, planTop - 3, planBottom + 3),
      boxOf(inPlan(0, 0), inPlan(alongMm, acrossMm), 'outline', 'sheet'),
      ...lie.flatMap(({ bar, box }, k) => [
        boxOf(inPlan(box.x0, box.y0), inPlan(box.x1, box.y1), 'bar', 'bar'),
        ...numbered(bar, k + 1, inPlan(box.x0, box.y1), inPlan(box.x1, box.y0)),
      ]),
      ...arrow(data.travel, inPlan(alongMm / 2, acrossMm / 2), Math.min(14, (alongMm * scale) / 4, (acrossMm * scale) / 3.2)),
      textOf([widthMm / 2, planBottom + apartMm], data.travels, { anchor: 'middle', tone: 'thin' }),
    ],
  }
}

/** Round the part one way, each from the corner where the one before it ends; a bar shorter than its side in the middle of it. */
function placed({ side, longMm, wideMm }: ChuckBar, alongMm: number, acrossMm: number): Box {
  const ofMm = side === 'left' || side === 'right' ? acrossMm : alongMm, shortMm = Math.max(0, ofMm - longMm) / 2
  switch (side) {
    case 'left': return { x0: -wideMm, x1: 0, y0: shortMm, y1: shortMm + longMm }
    case 'back': return { x0: shortMm, x1: shortMm + longMm, y0: acrossMm, y1: acrossMm + wideMm }
    case 'right': return { x0: alongMm, x1: alongMm + wideMm, y0: acrossMm - shortMm - longMm, y1: acrossMm - shortMm }
    case 'front': return { x0: alongMm - shortMm - longMm, x1: alongMm - shortMm, y0: -wideMm, y1: 0 }
  }
}

const around = (boxes: readonly Box[]): Box => ({
  x0: Math.min(...boxes.map(({ x0 }) => x0)), y0: Math.min(...boxes.map(({ y0 }) => y0)), x1: Math.max(...boxes.map(({ x1 }) => x1)), y1: Math.max(...boxes.map(({ y1 }) => y1)),
})

const poleEveryMm = 9

function poles(from: number, to: number, top: number, bottom: number): readonly Item[] {
  return Array.from({ length: Math.floor((to - from) / poleEveryMm) + 1 }, (_, k) => lineOf([from + k * poleEveryMm, top], [from + k * poleEveryMm, bottom], 'rule'))
}

/** Its place in the order, and its name along it where that has room. */
function numbered({ called, side }: ChuckBar, place: number, [x0, y0]: Point, [x1, y1]: Point): readonly Item[] {
  const isUpright = side === 'left' || side === 'right', long = isUpright ? y1 - y0 : x1 - x0, wide = isUpright ? x1 - x0 : y1 - y0
  const nameMm = textWidthMm(called, letteringMm), hasRoom = called !== '' && wide >= 2 * letteringMm && long >= nameMm + 14, middle: Point = [(x0 + x1) / 2, (y0 + y1) / 2]
  const at = (off: number): Point => (isUpright ? [middle[0], middle[1] - off] : [middle[0] + off, middle[1]])
  return [
    textOf(at(hasRoom ? -nameMm / 2 - 2 : 0), String(place), { anchor: 'middle', bold: true, sizeMm: 4.6 }),
    ...(hasRoom ? [textOf(at(4), called, { anchor: 'middle', turnDeg: isUpright ? 90 : 0 })] : []),
  ]
}

function arrow(travel: 'along' | 'across', [x, y]: Point, half: number): readonly Item[] {
  const at = (along: number, off: number): Point => (travel === 'along' ? [x + along, y + off] : [x + off, y + along])
  const headed = (end: 1 | -1): Item => pathOf([at(end * (half - 2.4), -1.2), at(end * half, 0), at(end * (half - 2.4), 1.2)], 'outline')
  return [lineOf(at(-half, 0), at(half, 0), 'outline'), headed(1), headed(-1)]
}
