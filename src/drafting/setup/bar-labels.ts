import { boxOf, letteringMm, lineOf, textOf } from '#drafting/items.ts'
import { shortened, textBoxOf, textWidthMm } from '#drafting/lettering.ts'
import type { Item, Point, TextItem } from '#drafting/scene.ts'
import { stackedUp } from '#drafting/stack-up.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import { holeDepths } from '#drafting/setup/hole-shape.ts'
import type { Shown, ShownBar } from '#drafting/setup/shown.ts'

/** Height of the row under the section for labels that find no room at their bars. */
export const labelRowMm = 5
/** Paper that upright lettering beside a bar takes. */
const besideMm = letteringMm + 1.6

type OnPaper = { readonly bar: ShownBar; readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number }

const style = (bar: ShownBar) => ({ bold: true, tone: bar.fouled ? ('danger' as const) : ('bar' as const) })

/**
 * What is written on each bar: level or upright in it, upright beside it, or in a row under the vise with a leader; bars of
 * one label share it there. `inRow` tells whether that row is used.
 */
export function barLabels(shown: Shown, frame: Frame, fromMm: number, toMm: number): { readonly items: readonly Item[]; readonly inRow: boolean } {
  const bars = shown.bars.map((bar): OnPaper => {
    const [x0, y1] = frame.inSection(bar.place.yMm, bar.fromMm), [x1, y0] = frame.inSection(bar.place.yMm + bar.acrossMm, bar.fromMm + bar.upMm)
    return { bar, x0, x1, y0, y1 }
  })
  const [leftX] = frame.inSection(0, 0), [rightX] = frame.inSection(shown.betweenMm, 0)
  const placed = bars.map((on) => ({ on, items: labelAt(on, bars, [leftX, rightX], drillings(shown, frame)) }))
  const boxes = placed.flatMap(({ on, items }) => items.flatMap((item) => (item.kind === 'text' ? [{ on, ...textBoxOf(item) }] : [])))
  const crowded = boxes.filter((box) => boxes.some((other) => other !== box && box.x0Mm < other.x1Mm && other.x0Mm < box.x1Mm && box.y0Mm < other.y1Mm && other.y0Mm < box.y1Mm))
  // Bars of one label are lettered alike: if one finds no room, all go to the row.
  const away = new Set([...placed.filter(({ items }) => items.length === 0), ...crowded].map(({ on }) => on.bar.label))
  const homeless = bars.filter(({ bar }) => away.has(bar.label))
  return { items: [...placed.flatMap(({ on, items }) => (away.has(on.bar.label) ? [] : items)), ...row(homeless, frame.sectionEndMm + 2.9, fromMm, toMm)], inRow: homeless.length > 0 }
}

/** Where a hole comes out below the part: nothing should be lettered there. */
type Drilling = { readonly x0: number; readonly x1: number; readonly y1: number }

function drillings({ holes, heightMm, seatMm }: Shown, frame: Frame): readonly Drilling[] {
  return holes.map((hole) => {
    const [x0] = frame.inSection(hole.yMm - hole.diameterMm / 2, 0), [x1] = frame.inSection(hole.yMm + hole.diameterMm / 2, 0)
    return { x0, x1, y1: frame.inSection(0, seatMm + Math.min(0, holeDepths(hole, heightMm).tipMm))[1] + 3.5 }
  })
}

function labelAt(on: OnPaper, bars: readonly OnPaper[], cavity: readonly [number, number], holes: readonly Drilling[]): readonly Item[] {
  const label = inBar(on) ?? besideBar(on, bars, cavity, holes)
  if (!label) return []
  const box = textBoxOf(label)
  // A hatched bar is cleared behind its lettering.
  return on.bar.fouled ? [boxOf([box.x0Mm - 0.3, box.y0Mm - 0.5], [box.x1Mm + 0.3, box.y1Mm + 0.5], 'none', 'sheet'), label] : [label]
}

function inBar({ bar, x0, x1, y0, y1 }: OnPaper): TextItem | null {
  const text = textWidthMm(bar.label, letteringMm, true) + 1.2, middle: Point = [(x0 + x1) / 2, (y0 + y1) / 2]
  const level = x1 - x0 >= text && y1 - y0 >= 4.2, upright = y1 - y0 >= text && x1 - x0 >= 4
  if (level && (x1 - x0 > y1 - y0 || !upright)) return textOf(middle, bar.label, { ...style(bar), anchor: 'middle' })
  return upright ? textOf(middle, bar.label, { ...style(bar), anchor: 'middle', turnDeg: 90 }) : null
}

/** Upright in the free space next to the bar and below the tips of drills, on the side of the part's middle first. */
function besideBar(on: OnPaper, bars: readonly OnPaper[], [leftX, rightX]: readonly [number, number], holes: readonly Drilling[]): TextItem | null {
  const { bar, x0, x1, y0, y1 } = on, text = textWidthMm(bar.label, letteringMm, true) + 1.2
  const sameHeight = bars.filter((other) => other !== on && other.y0 < y1 && other.y1 > y0)
  const freeRight = Math.min(rightX, ...sameHeight.filter((other) => other.x0 >= x1 - 1e-6).map((other) => other.x0)) - x1
  const freeLeft = x0 - Math.max(leftX, ...sameHeight.filter((other) => other.x1 <= x0 + 1e-6).map((other) => other.x1))
  // Where two bars look into one space, each label takes its own half of it.
  const needed = besideMm * (sameHeight.length > 0 ? 2 : 1)
  const right = freeRight >= needed ? [x1 + besideMm / 2] : [], left = freeLeft >= needed ? [x0 - besideMm / 2] : []
  for (const x of (x0 + x1 <= leftX + rightX ? [...right, ...left] : [...left, ...right])) {
    const top = Math.max(y0, ...holes.filter((hole) => hole.x0 < x + besideMm / 2 && hole.x1 > x - besideMm / 2).map((hole) => hole.y1))
    if (y1 - top >= text) return textOf([x, (top + y1) / 2], bar.label, { ...style(bar), anchor: 'middle', turnDeg: 90 })
  }
  return null
}

function row(homeless: readonly OnPaper[], y: number, fromMm: number, toMm: number): readonly Item[] {
  const labels = [...new Set(homeless.map(({ bar }) => bar.label))]
  const groups = labels.map((label) => homeless.filter(({ bar }) => bar.label === label))
    .map((bars) => ({ bars, preferMm: bars.reduce((sum, { x0, x1 }) => sum + (x0 + x1) / 2, 0) / bars.length }))
    .toSorted((a, b) => a.preferMm - b.preferMm)
  const widest = (toMm - fromMm) / Math.max(1, groups.length) - 2
  const said = groups.map(({ bars, preferMm }) => {
    const text = shortened(bars[0]!.bar.label, widest, letteringMm, true)
    return { bars, text, preferMm, sizeMm: textWidthMm(text, letteringMm, true) }
  })
  return stackedUp(said, fromMm, toMm, 2).flatMap((x, index): readonly Item[] => {
    const { bars, text } = said[index]!
    return [
      ...bars.map(({ x0, x1, y0, y1 }) => lineOf([(x0 + x1) / 2, (y0 + y1) / 2], [x, y - 2], 'thin')),
      textOf([x, y], text, { ...style(bars[0]!.bar), anchor: 'middle' }),
    ]
  })
}
