import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { letteringMm, lineOf, pathOf, textOf } from '#drafting/items.ts'
import { shortened, textWidthMm } from '#drafting/lettering.ts'
import { umAxis } from '#drafting/inspect/height-axis.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'
import { stackedUp } from '#drafting/stack-up.ts'

export type HeightOverYears = {
  readonly title: string
  readonly description: string
  /** Heights as they were found, oldest first; `day` as `2026-03-31`. `uUm` is half the length of its whisker; null: not known, drawn as a ring. */
  readonly heights: readonly { readonly day: string; readonly heightMm: number; readonly uUm: number | null }[]
  /** What happened to the bar, in a word: `reground`. */
  readonly events: readonly { readonly day: string; readonly says: string }[]
  /** What the whiskers mean; empty: nothing is said. */
  readonly whiskers: string
}

const leftMm = 15
const edgeMm = 3
const headMm = 11
const footMm = 7
/** Nothing is enlarged so far that less is seen from top to bottom. */
const leastSpanUm = 4
const eventRows = 2

/** The height of one bar over the years, µm against the latest, with its uncertainty; regrinds and the like as upright lines. */
export function heightOverYears(data: HeightOverYears, { widthMm, heightMm, units }: { readonly widthMm: number; readonly heightMm: number; readonly units: Units }): Scene {
  const latest = data.heights.at(-1), eventMm = data.events.length === 0 ? 0 : eventRows * 4.6
  const topMm = headMm + eventMm, endMm = heightMm - footMm, rightMm = widthMm - edgeMm
  const years = [...data.heights, ...data.events].map(({ day }) => yearOf(day)), from = Math.min(...years), to = Math.max(...years)
  const spread = Math.max(0.25, to - from), pad = spread * 0.06, xOf = (day: string): number => leftMm + ((yearOf(day) - (from + to - spread) / 2 + pad) / (spread + 2 * pad)) * (rightMm - leftMm)
  const ums = data.heights.map(({ heightMm: height }) => (height - (latest?.heightMm ?? 0)) * 1000)
  const ends = ums.flatMap((um, i) => { const u = data.heights[i]!.uUm ?? 0; return [um - u, um + u] }), least = Math.min(0, ...ends), most = Math.max(0, ...ends)
  const axis = umAxis({ middleUm: (least + most) / 2, mmPerUm: (endMm - topMm - 6) / Math.max(leastSpanUm, most - least), topMm, endMm }, units)
  const points = data.heights.map(({ day }, i): Point => [xOf(day), axis.yOf(ums[i]!)])
  return {
    title: data.title, description: data.description, widthMm, heightMm, fields: [],
    items: [
      textOf([2, 2.8], `${axis.unit} from ${latest ? wordLength(latest.heightMm, units) : '?'}`, { tone: 'thin' }),
      ...(data.whiskers === '' ? [] : [textOf([2, 7.6], data.whiskers, { tone: 'thin' })]),
      ...axis.ticks.flatMap(({ um, label }): readonly Item[] => [
        lineOf([leftMm, axis.yOf(um)], [rightMm, axis.yOf(um)], Math.abs(um) < 1e-9 ? 'thin' : 'rule'), textOf([leftMm - 1.5, axis.yOf(um)], label, { anchor: 'end', tone: 'thin' }),
      ]),
      ...yearTicks(from + (to - from - spread) / 2 - pad, spread + 2 * pad, endMm, rightMm),
      ...eventLines(data, xOf, endMm, rightMm),
      ...data.heights.flatMap(({ uUm }, i): readonly Item[] => (uUm === null ? [] : whisker(points[i]!, uUm * axis.mmPerUm))),
      ...(points.length > 1 ? [pathOf(points, 'bar')] : []),
      ...points.map((centre, i): Item => ({ kind: 'circle', centre, radiusMm: 1.1, line: 'bar', fill: data.heights[i]!.uUm === null ? 'sheet' : 'ink' })),
      lineOf([leftMm, topMm], [leftMm, endMm], 'thin'), lineOf([leftMm, endMm], [rightMm, endMm], 'outline'),
    ],
  }
}

const whisker = ([x, y]: Point, upMm: number): readonly Item[] =>
  [lineOf([x, y - upMm], [x, y + upMm], 'thin'), ...[-upMm, upMm].map((up) => lineOf([x - 1.2, y + up], [x + 1.2, y + up], 'thin'))]

/** January of each year that has room, named. */
function yearTicks(from: number, span: number, endMm: number, rightMm: number): readonly Item[] {
  const perYear = (rightMm - leftMm) / span, each = [1, 2, 5, 10, 20, 50, 100].find((years) => years * perYear >= 13) ?? 200
  const first = Math.ceil(from / each) * each
  return Array.from({ length: Math.max(0, Math.floor((from + span - first) / each) + 1) }, (_, i) => first + i * each).flatMap((year): readonly Item[] => {
    const x = leftMm + (year - from) * perYear
    return [lineOf([x, endMm], [x, endMm + 1.6], 'outline'), ...(x > rightMm - 5 ? [] : [textOf([x, endMm + 4.2], String(year), { anchor: 'middle', tone: 'thin' })])]
  })
}

/** What happened, as upright dashes, their words in two rows above, by turns. */
function eventLines(data: HeightOverYears, xOf: (day: string) => number, endMm: number, rightMm: number): readonly Item[] {
  const events = data.events.toSorted((a, b) => (a.day < b.day ? -1 : 1))
  const words = events.map(({ says }) => shortened(says, 34, letteringMm))
  return Array.from({ length: eventRows }, (_, row) => row).flatMap((row): readonly Item[] => {
    const ours = events.map((_, i) => i).filter((i) => i % eventRows === row), y = headMm + row * 4.6 + 1
    const middles = stackedUp(ours.map((i) => ({ preferMm: xOf(events[i]!.day), sizeMm: textWidthMm(words[i]!, letteringMm) })), leftMm, rightMm, 2)
    return ours.flatMap((i, at): readonly Item[] => [
      lineOf([xOf(events[i]!.day), headMm + eventRows * 4.6 - 0.8], [xOf(events[i]!.day), endMm], 'hidden'),
      ...(middles[at]! - textWidthMm(words[i]!, letteringMm) / 2 >= leftMm - 1e-6 ? [textOf([middles[at]!, y], words[i]!, { anchor: 'middle' })] : []),
    ])
  })
}

/** `2026-07-02` as 2026.5: close enough for a drawing. */
function yearOf(day: string): number {
  const [year = 0, month = 1, date = 1] = day.slice(0, 10).split('-').map(Number)
  return year + (month - 1) / 12 + (date - 1) / 366
}
