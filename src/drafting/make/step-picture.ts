import type { BarSize } from '#model/bar-size.ts'
import type { StepKind } from '#model/make-step.ts'
import { boxOf, lineOf, pathOf, shapeOf, textOf } from '#drafting/items.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'

/**
 * What a step does to a bar. `size`: of the tallest bar once the step is done; `eachMm`: taken off each side by it (off the upper one, where one face is ground), drawn not to scale where it is too thin to see.
 * `said`: sizes below the picture, worded; empty: none.
 */
export type StepPictureData = { readonly kind: StepKind; readonly title: string; readonly description: string; readonly size: BarSize; readonly eachMm: number; readonly said: string }

type View = 'end' | 'side' | 'bent' | 'hot' | 'sawn' | 'list'

const viewOf: { readonly [step in StepKind]: View } = {
  'order': 'list', 'check the delivery': 'side', 'saw': 'sawn', 'square the ends': 'side', 'mill the faces': 'end', 'rough the edges': 'end', 'let lie': 'bent', 'finish the edges': 'end',
  'spring pass': 'end', 'deburr and mark': 'side', 'rub': 'side', 'clean for the furnace': 'side', 'harden': 'hot', 'temper': 'hot', 'read after hardening': 'bent', 'straighten': 'bent',
  'temper again': 'hot', 'hard mill the edges': 'end', 'grind the faces': 'end', 'grind the edges': 'end', 'demagnetise and cool': 'side', 'stone and clean': 'side', 'inspect': 'side',
  'clean and demagnetise': 'side', 'stone burrs': 'side', 'read before grinding': 'side', 'grind the first face': 'end', 'grind the second face': 'end', 'mark anew': 'side',
}

const pictureMm = { width: 60, up: 30, edge: 3, said: 6 }
/** The least that what is taken off is drawn with. */
const leastTakenMm = 1

/** A step as a small drawing, wide enough for a card of the strip; the same for screen and paper. */
export function stepPicture(data: StepPictureData): Scene {
  const items = { end: endView, side: sideView, bent: bentView, hot: hotView, sawn: sawnView, list: listView }[viewOf[data.kind]](data)
  return {
    title: data.title, description: data.description, widthMm: pictureMm.width, heightMm: pictureMm.up + (data.said === '' ? 0 : pictureMm.said), fields: [],
    items: [...items, ...(data.said === '' ? [] : [textOf([pictureMm.width / 2, pictureMm.up + pictureMm.said / 2 - 0.5], data.said, { anchor: 'middle' })])],
  }
}

const middleMm = pictureMm.width / 2, floorMm = pictureMm.up - 5, topMm = 6
const ground = (from = 6, to = pictureMm.width - 6): readonly Item[] => [boxOf([from, floorMm], [to, floorMm + 2.6], 'none', 'cut-face'), lineOf([from, floorMm], [to, floorMm], 'outline')]

/** The two mates side by side from their ends, what comes off dashed above and below (or at the sides), and the tool. */
function endView({ kind, size, eachMm }: StepPictureData): readonly Item[] {
  const faces = kind === 'mill the faces' || kind === 'grind the faces', oneSide = kind === 'grind the first face' || kind === 'grind the second face', grinds = kind.startsWith('grind')
  const [upMm, acrossMm] = faces ? [size.thicknessMm, size.heightMm] : [size.heightMm, size.thicknessMm]
  const scale = Math.min((floorMm - topMm - 3) / (upMm + 2 * eachMm), 24 / (2 * acrossMm)), up = upMm * scale, across = acrossMm * scale
  const taken = eachMm > 0 ? Math.max(leastTakenMm, eachMm * scale) : 0, under = oneSide ? 0 : taken
  const bottom = grinds ? floorMm : floorMm - 1, left = middleMm - across - 0.4, bars = [left, middleMm + 0.4], barTop = bottom - under - up
  const jawTop = bottom - taken - up * 0.5
  const held = grinds ? ground() : [left - 9, middleMm + 0.4 + across].map((from) => boxOf([from, jawTop], [from + 9, bottom + 2], 'outline', 'cut-face'))
  return [
    ...held,
    ...bars.flatMap((x): readonly Item[] => [
      ...(taken > 0 ? [boxOf([x, barTop - taken], [x + across, barTop], 'removal', 'removal')] : []),
      ...(under > 0 ? [boxOf([x, barTop + up], [x + across, barTop + up + under], 'removal', 'removal')] : []),
      boxOf([x, barTop], [x + across, barTop + up], 'bar', 'bar'),
    ]),
    ...(grinds
      ? [pathOf(arc([middleMm, barTop - taken - 12], 12, 35, 145), 'outline')]
      : [boxOf([left - 4, barTop - taken - 4.5], [middleMm + across + 4.4, barTop - (kind === 'spring pass' ? 0 : Math.min(taken, 0.6))], 'thin', 'none')]),
  ]
}

/** One bar from the side, on the plate where it is read, with what the step does to it. */
function sideView({ kind, size, eachMm }: StepPictureData): readonly Item[] {
  const roomMm = floorMm - topMm - 6, scale = Math.min(44 / size.lengthMm, roomMm / size.heightMm)
  const long = Math.max(30, size.lengthMm * scale), left = middleMm - long / 2, right = left + long
  const top = floorMm - Math.min(roomMm, Math.max(3, size.heightMm * scale))
  const bar = boxOf([left, top], [right, floorMm], 'bar', 'bar'), isRead = kind === 'inspect' || kind === 'check the delivery' || kind === 'read before grinding'
  if (kind === 'square the ends') {
    const taken = Math.max(leastTakenMm, eachMm * scale)
    return [bar, boxOf([left - taken, top], [left, floorMm], 'removal', 'removal'), boxOf([right, top], [right + taken, floorMm], 'removal', 'removal')]
  }
  if (kind === 'rub') return [...ground(), bar, pathOf([...arc([middleMm - 6, top - 3.4], 2.4, 0, 360), ...arc([middleMm - 1.2, top - 3.4], 2.4, 180, 540)], 'thin')]
  if (kind === 'deburr and mark' || kind === 'mark anew') {
    const mark = shapeOf([[left, top], [left, top + 3], [left + 3, top]], 'bar', 'ink'), corners: readonly Point[] = [[left, floorMm], [right, top], [right, floorMm]]
    return [bar, mark, ...corners.map(([x, y]) => lineOf([x - 1, y - 1], [x + 1, y + 1], 'thin'))]
  }
  if (kind === 'stone and clean' || kind === 'stone burrs') return [...ground(), bar, boxOf([left + long * 0.55, top - 3.2], [left + long * 0.85, top], 'outline', 'cut-face')]
  if (kind === 'demagnetise and cool' || kind === 'clean and demagnetise') return [bar, ...[0.25, 0.5, 0.75].map((share) => pathOf(wave(left + long * share, top - 2, 6), 'thin'))]
  return [...ground(), bar, ...(isRead ? indicator(left + long * 0.5, top) : [pathOf(wave(left + long * 0.3, top - 2, 4), 'thin'), pathOf(wave(left + long * 0.6, top - 2, 4), 'thin')])]
}

/** A bent bar, its bow drawn large: lying on its ends, or between supports under the press. */
function bentView({ kind }: StepPictureData): readonly Item[] {
  const left = 8, right = pictureMm.width - 8, bowMm = 3, upMm = 5, lift = kind === 'straighten' ? 4 : 0
  const arch = (y: number, sign: 1 | -1): readonly Point[] => Array.from({ length: 21 }, (_, k): Point => {
    const x = left + ((right - left) * (sign === 1 ? k : 20 - k)) / 20, u = (2 * (x - middleMm)) / (right - left)
    return [x, y - bowMm * (1 - u * u)]
  })
  const bottom = floorMm - lift, bar = shapeOf([...arch(bottom - upMm, 1), ...arch(bottom, -1)], 'bar', 'bar')
  if (kind !== 'straighten') return [...ground(), bar, ...(kind === 'read after hardening' ? indicator(middleMm, bottom - upMm - bowMm) : [lineOf([middleMm, bottom - bowMm], [middleMm, bottom], 'thin')])]
  const press = bottom - upMm - bowMm
  return [
    ...ground(), bar,
    ...[left + 4, right - 4].map((x) => shapeOf([[x, bottom - 0.9], [x - 2, floorMm], [x + 2, floorMm]], 'outline', 'sheet')),
    shapeOf([[middleMm, press], [middleMm - 1.6, press - 3], [middleMm + 1.6, press - 3]], 'outline', 'ink'), lineOf([middleMm, press - 3], [middleMm, 2], 'outline'),
  ]
}

/** The furnace with bars hung in it. */
function hotView({ kind }: StepPictureData): readonly Item[] {
  const left = 14, right = pictureMm.width - 14, bottom = floorMm + 1
  return [
    boxOf([left, 3], [right, bottom], 'outline', 'cut-face'), boxOf([left + 3, 6], [right - 3, bottom - 3], 'outline', 'sheet'),
    ...[-5, 5].flatMap((by): readonly Item[] => [lineOf([middleMm + by, 6], [middleMm + by, 8.5], 'thin'), boxOf([middleMm + by - 1.5, 8.5], [middleMm + by + 1.5, bottom - 5], 'bar', 'bar')]),
    ...(kind === 'harden' ? [pathOf(wave(middleMm, bottom - 5, 8), 'danger'), pathOf(wave(middleMm - 10, bottom - 5, 8), 'danger'), pathOf(wave(middleMm + 10, bottom - 5, 8), 'danger')] : []),
  ]
}

/** A stock length with cuts; mates lie next to each other. */
function sawnView(): readonly Item[] {
  const left = 5, right = pictureMm.width - 5, top = 10, bottom = 20
  return [
    boxOf([left, top], [right, bottom], 'thin', 'cut-face'),
    ...[0, 1].map((k) => boxOf([left + k * 17, top], [left + k * 17 + 16, bottom], 'bar', 'bar')),
    ...[16.5, 33.5].map((x) => lineOf([left + x, top - 5], [left + x, bottom + 3], 'outline')),
  ]
}

/** Something that is written for. */
const listView = (): readonly Item[] => [boxOf([20, 3], [40, floorMm], 'outline', 'sheet'), ...[8, 12, 16, 20].map((y) => lineOf([23, y], [37, y], 'thin'))]

const indicator = (x: number, y: number): readonly Item[] => [lineOf([x, y], [x, y - 3], 'outline'), { kind: 'circle', centre: [x, y - 6], radiusMm: 3, line: 'outline', fill: 'sheet' }, lineOf([x, y - 6], [x + 1.6, y - 7.8], 'thin')]

const arc = ([x, y]: Point, radiusMm: number, fromDeg: number, toDeg: number): readonly Point[] =>
  Array.from({ length: 25 }, (_, k): Point => { const at = ((fromDeg + ((toDeg - fromDeg) * k) / 24) * Math.PI) / 180; return [x + radiusMm * Math.cos(at), y + radiusMm * Math.sin(at)] })

/** A line that rises in waves. */
const wave = (x: number, bottom: number, upMm: number): readonly Point[] => Array.from({ length: 13 }, (_, k): Point => [x + Math.sin((k * Math.PI) / 3) * 0.8, bottom - (upMm * k) / 12])
