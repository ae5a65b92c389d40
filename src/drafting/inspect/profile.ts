import type { Units } from '#model/shop-record.ts'
import { boxOf, letteringMm, lineOf, pathOf, shapeOf, textOf } from '#drafting/items.ts'
import { textWidthMm } from '#drafting/lettering.ts'
import { heightAxis, type HeightAxis } from '#drafting/inspect/height-axis.ts'
import type { Item, LineKind, Point, Scene } from '#drafting/scene.ts'

/** A height above the zero; `um` null: not read yet. `uUm` is half the length of its whisker; null: none. */
export type ProfilePoint = { readonly xMm: number; readonly um: number | null; readonly uUm: number | null }

/** One line along one bar. Up to four are told apart by line and mark. */
export type ProfileSeries = { readonly label: string; readonly points: readonly ProfilePoint[] }

export type ProfileData = {
  readonly series: readonly ProfileSeries[]
  /** What the zero line stands for, in words. */
  readonly zero: string
  /** Heights between which all is within a limit. */
  readonly band: { readonly fromUm: number; readonly toUm: number; readonly label: string } | null
  /** What the whiskers mean, in words; empty: there are none. */
  readonly whiskers: string
  /** Place of the worst of all; null: not marked. */
  readonly worstAtMm?: number | null
}

/** Paper for the profile: the bar's x = 0 at `leftMm`, the figures of its scale to the left of that. */
export type ProfileFrame = {
  readonly leftMm: number
  readonly rightMm: number
  readonly topMm: number
  /** Of the heights alone; what the lines mean stands above them. */
  readonly heightMm: number
  /** Paper over bar, along. */
  readonly scale: number
}

/** Paper to the left of the bar for the figures of the scale. */
export const profileLeftMm = 13
const edgeMm = 2
const rowMm = 5

const looks: readonly { readonly line: LineKind; readonly mark: (at: Point) => Item }[] = [
  { line: 'bar', mark: (centre) => ({ kind: 'circle', centre, radiusMm: 0.9, line: 'bar', fill: 'ink' }) },
  { line: 'hidden', mark: (centre) => ({ kind: 'circle', centre, radiusMm: 1.2, line: 'bar', fill: 'sheet' }) },
  { line: 'thin', mark: ([x, y]) => boxOf([x - 1.1, y - 1.1], [x + 1.1, y + 1.1], 'bar', 'ink') },
  { line: 'centre', mark: ([x, y]) => shapeOf([[x, y - 1.5], [x + 1.5, y], [x, y + 1.5], [x - 1.5, y]], 'bar', 'sheet') },
]

/** Heights along the bars, enlarged by a round number that is stated; what cannot be shown at that scale is said in words. */
export function profileItems(data: ProfileData, frame: ProfileFrame, units: Units): { readonly items: readonly Item[]; readonly times: number; readonly endMm: number } {
  const says = legend(data, frame), rows = 1 + (says.length === 0 ? 0 : Math.max(...says.map(({ row }) => row)) + 1)
  const topMm = frame.topMm + rows * rowMm, endMm = topMm + frame.heightMm
  const axis = heightAxis(data, { topMm, endMm, scale: frame.scale }, units)
  return {
    times: axis.times, endMm,
    items: [
      textOf([frame.leftMm - profileLeftMm + edgeMm, frame.topMm + rowMm / 2], axis.name, { tone: 'thin' }),
      ...says.flatMap(({ items }) => items),
      ...scaleLines(data, axis, frame),
      ...data.series.flatMap((series, index) => seriesItems(series, looks[index % looks.length]!, axis, frame)),
      ...worst(data, axis, frame),
    ],
  }
}

/** The profile alone, for cards, prints and the terminal, as high as it needs; `heightMm` is that of the heights. */
export function profileDrawing(
  data: ProfileData & { readonly title: string; readonly description: string; readonly lengthMm: number },
  { widthMm, heightMm, units }: { readonly widthMm: number; readonly heightMm: number; readonly units: Units },
): Scene & { readonly times: number } {
  const rightMm = widthMm - edgeMm - 2, scale = (rightMm - profileLeftMm) / data.lengthMm
  const { items, times, endMm } = profileItems(data, { leftMm: profileLeftMm, rightMm, topMm: 0, heightMm, scale }, units)
  return { title: data.title, description: data.description, widthMm, heightMm: endMm + 1, items, fields: [], times }
}

/** What each line, the whiskers, the band and the zero mean, on as many rows as the paper asks for. */
function legend(data: ProfileData, frame: ProfileFrame): readonly { readonly row: number; readonly items: readonly Item[] }[] {
  const entries = [
    ...(data.series.length > 1 ? data.series.map(({ label }, index) => ({ label, look: looks[index % looks.length]! })) : []),
    ...(data.whiskers === '' ? [] : [{ label: data.whiskers, look: null }]),
    ...(data.band === null ? [] : [{ label: data.band.label, look: 'band' as const }]),
    ...(data.zero === '' ? [] : [{ label: data.zero, look: 'zero' as const }]),
  ]
  let x = frame.leftMm, row = 0
  return entries.map(({ label, look }) => {
    const textAt = look === null ? 4 : 9.5, wideMm = textWidthMm(label, letteringMm) + textAt + 4.5
    if (x > frame.leftMm && x + wideMm - 4 > frame.rightMm) { x = frame.leftMm; row += 1 }
    const left = x, y = frame.topMm + rowMm * (row + 1.5)
    x += wideMm
    const sample: readonly Item[] = look === null ? whisker([left + 1.4, y], 1.6)
      : look === 'zero' ? [lineOf([left, y], [left + 8, y], 'outline')]
      : look === 'band' ? [lineOf([left, y - 1.2], [left + 8, y - 1.2], 'centre'), lineOf([left, y + 1.2], [left + 8, y + 1.2], 'centre')]
      : [lineOf([left, y], [left + 8, y], look.line), look.mark([left + 4, y])]
    return { row, items: [...sample, textOf([left + textAt, y], label)] }
  })
}

function scaleLines({ band }: ProfileData, axis: HeightAxis, { leftMm, rightMm }: ProfileFrame): readonly Item[] {
  return [
    ...(band && axis.shows(band.fromUm) && axis.shows(band.toUm) ? [
      boxOf([leftMm, axis.yOf(band.toUm)], [rightMm, axis.yOf(band.fromUm)], 'none', 'bar'),
      ...[band.fromUm, band.toUm].map((um) => lineOf([leftMm, axis.yOf(um)], [rightMm, axis.yOf(um)], 'centre')),
    ] : []),
    ...axis.ticks.flatMap(({ um, label }): readonly Item[] => {
      const y = axis.yOf(um)
      return [
        lineOf([leftMm - 2.5, y], [leftMm, y], 'thin'), textOf([leftMm - 3.5, y], label, { anchor: 'end', tone: 'thin' }),
        lineOf([leftMm, y], [rightMm, y], Math.abs(um) < 1e-9 ? 'outline' : 'rule'),
      ]
    }),
    lineOf([leftMm, axis.topMm], [leftMm, axis.endMm], 'thin'),
  ]
}

function seriesItems({ points }: ProfileSeries, look: (typeof looks)[number], axis: HeightAxis, { leftMm, scale }: ProfileFrame): readonly Item[] {
  const read = points.flatMap(({ xMm, um, uUm }) => (um === null ? [] : [{ at: [leftMm + xMm * scale, axis.yOf(um)] as const, upMm: uUm === null ? 0 : uUm * axis.mmPerUm }]))
  return [
    ...read.flatMap(({ at, upMm }) => (upMm > 0.3 ? whisker(at, upMm) : [])),
    ...(read.length > 1 ? [pathOf(read.map(({ at }) => at), look.line)] : []),
    ...read.map(({ at }) => look.mark(at)),
  ]
}

function whisker([x, y]: Point, upMm: number): readonly Item[] {
  return [lineOf([x, y - upMm], [x, y + upMm], 'thin'), lineOf([x - 1, y - upMm], [x + 1, y - upMm], 'thin'), lineOf([x - 1, y + upMm], [x + 1, y + upMm], 'thin')]
}

/** A dimension between the highest and the lowest reading at the worst place, its size beside it. */
function worst({ series, worstAtMm }: ProfileData, axis: HeightAxis, { leftMm, rightMm, scale }: ProfileFrame): readonly Item[] {
  if (worstAtMm === null || worstAtMm === undefined) return []
  const ums = series.flatMap(({ points }) => points.filter(({ xMm }) => Math.abs(xMm - worstAtMm) < 1e-6).flatMap(({ um }) => (um === null ? [] : [um])))
  if (ums.length < 2) return []
  const x = leftMm + worstAtMm * scale, most = Math.max(...ums), least = Math.min(...ums), right = x + 16 < rightMm
  const label = axis.word(most - least), at = right ? x + 5 : x - 5
  return [
    lineOf([x, axis.yOf(most)], [at + (right ? 1.5 : -1.5), axis.yOf(most)], 'thin'), lineOf([x, axis.yOf(least)], [at + (right ? 1.5 : -1.5), axis.yOf(least)], 'thin'),
    { kind: 'dimension', from: [at, axis.yOf(most)], to: [at, axis.yOf(least)], arrows: (most - least) * axis.mmPerUm < 6.5 ? 'outside' : 'inside', gap: null, tail: null, tone: 'thin' },
    textOf([at + (right ? 2 : -2), axis.yOf((most + least) / 2)], label, { bold: true, anchor: right ? 'start' : 'end' }),
  ]
}
