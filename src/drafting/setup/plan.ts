import type { Cut, Hole } from '#model/cut.ts'
import { boxOf, lineOf, pathOf, shapeOf } from '#drafting/items.ts'
import type { Fill, Item, LineKind, Point } from '#drafting/scene.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import { cutsThrough, type Shown } from '#drafting/setup/shown.ts'

/**
 * The plan under the section, seen from above: along the jaws upright with the part's left end at the bottom, across the jaws
 * level with the fixed jaw on the left, on the same axis as the section. No dimensions and no lettering.
 */
export function planItems(shown: Shown, frame: Frame): readonly Item[] {
  const part = boxOf(frame.inPlan(0, 0), frame.inPlan(shown.alongMm, shown.betweenMm), 'none', 'sheet')
  const edge = { ...part, line: shown.openInPlan ? 'hidden' : 'outline', fill: 'none' } as const
  const cuts = shown.picture.cuts.filter((cut) => cut !== null)
  return [
    ...jaws(shown, frame),
    part,
    ...cuts.flatMap((cut) => removed(cut, shown, frame)),
    ...shown.bars.flatMap((bar) => {
      const line = bar.fouled ? 'danger' : 'bar'
      return strip(frame, shown, [bar.place.yMm, bar.place.yMm + bar.acrossMm], [bar.place.xMm, bar.place.xMm + bar.lengthMm], line, line)
    }),
    edge,
    ...(shown.picture.shape === 'round' ? [roundAxis(shown, frame)] : []),
    ...shown.picture.hollows.map((rect) => boxOf(frame.inPlan(rect.x0Mm, rect.y0Mm), frame.inPlan(rect.x1Mm, rect.y1Mm), 'hidden', 'none')),
    ...cuts.flatMap((cut) => removed(cut, shown, frame).map((item): Item => (item.kind === 'shape' ? { ...item, fill: 'none' } : item))),
    ...shown.holes.flatMap((hole) => holePlan(hole, shown, frame)),
  ]
}

/** Both jaws as wide as they are known to be, the part in the middle of them. */
function jaws(shown: Shown, frame: Frame): readonly Item[] {
  const { betweenMm, alongMm, picture } = shown, thickMm = frame.jawMm / frame.scale
  const widthMm = picture.jawWidthMm ?? Infinity
  const reach: readonly [number, number] = [(alongMm - widthMm) / 2, (alongMm + widthMm) / 2]
  return [
    ...strip(frame, shown, [-thickMm, 0], reach, 'outline', 'none'),
    ...strip(frame, shown, [betweenMm, betweenMm + thickMm], reach, 'outline', 'none'),
  ]
}

/** What the paper shows of something long, in mm along the part. */
export function shownAlong({ overhangMm, scale }: Frame, { alongMm }: Shown, [x0, x1]: readonly [number, number]): readonly [number, number] {
  const past = (overhangMm - 1.2) / scale
  return [Math.max(x0, -past), Math.min(x1, alongMm + past)]
}

/** Something long seen from above, cut with a break line where it runs past the paper kept for it. */
function strip(
  frame: Frame, shown: Shown, [y0, y1]: readonly [number, number], [x0, x1]: readonly [number, number], line: LineKind, fill: Fill,
): readonly Item[] {
  const [low, high] = shownAlong(frame, shown, [x0, x1])
  if (high <= low) return []
  const [left, bottom] = frame.inPlan(low, y0), [right, top] = frame.inPlan(high, y1)
  const cutLow = low > x0, cutHigh = high < x1
  const sides: readonly Item[] = [
    lineOf([left, bottom], [left, top], line), lineOf([right, bottom], [right, top], line),
    cutLow ? breakLine([left, bottom], [right, bottom]) : lineOf([left, bottom], [right, bottom], line),
    cutHigh ? breakLine([left, top], [right, top]) : lineOf([left, top], [right, top], line),
  ]
  return cutLow || cutHigh
    ? [shapeOf([[left, bottom], [left, top], [right, top], [right, bottom]], 'none', fill), ...sides]
    : [boxOf([left, bottom], [right, top], line, fill)]
}

/** A thin line with a zigzag: what is behind it goes on. */
function breakLine([x0, y]: Point, [x1]: Point): Item {
  const middle = (x0 + x1) / 2, step = Math.min(1.2, (x1 - x0) / 5)
  return pathOf([[x0 - 0.8, y], [middle - step, y], [middle - step / 2, y - step], [middle + step / 2, y + step], [middle + step, y], [x1 + 0.8, y]], 'thin')
}

/** What is milled off inside the part, and an end that is squared. A face over the whole part shows nothing here. */
function removed(cut: Cut, { alongMm, betweenMm, heightMm }: Shown, frame: Frame): readonly Item[] {
  if (cut.kind === 'hole') return []
  if (cut.kind === 'end') {
    const x0 = cut.side === 'left' ? 0 : alongMm - cut.stockMm
    return cut.stockMm > 0 ? [boxOf(frame.inPlan(x0, 0), frame.inPlan(x0 + cut.stockMm, betweenMm), 'removal', 'removal')] : []
  }
  if (!cut.rect) return []
  const x0 = Math.max(0, cut.rect.x0Mm), x1 = Math.min(alongMm, cut.rect.x1Mm), y0 = Math.max(0, cut.rect.y0Mm), y1 = Math.min(betweenMm, cut.rect.y1Mm)
  if (x1 <= x0 || y1 <= y0) return []
  const low = frame.inPlan(x0, y0), high = frame.inPlan(x1, y1)
  const crossed: readonly Item[] = cutsThrough(cut, heightMm) ? [lineOf(low, high, 'removal'), lineOf([low[0], high[1]], [high[0], low[1]], 'removal')] : []
  return [boxOf(low, high, 'removal', 'removal'), ...crossed]
}

function roundAxis({ alongMm, betweenMm }: Shown, { inPlan, scale }: Frame): Item {
  return lineOf(inPlan(-4 / scale, betweenMm / 2), inPlan(alongMm + 4 / scale, betweenMm / 2), 'centre')
}

/** A circle with centre lines; where its place along is not known, the band it may be in. */
function holePlan(hole: Hole, { alongMm }: Shown, { inPlan, scale }: Frame): readonly Item[] {
  const r = hole.diameterMm / 2, past = r + 3 / scale
  const across = (xMm: number): Item => lineOf(inPlan(xMm, hole.yMm - past), inPlan(xMm, hole.yMm + past), 'centre')
  if (hole.xMm === null) {
    return [
      boxOf(inPlan(0, hole.yMm - r), inPlan(alongMm, hole.yMm + r), 'hidden', 'none'),
      lineOf(inPlan(-3 / scale, hole.yMm), inPlan(alongMm + 3 / scale, hole.yMm), 'centre'),
    ]
  }
  return [
    { kind: 'circle', centre: inPlan(hole.xMm, hole.yMm), radiusMm: r * scale, line: 'outline', fill: 'none' },
    across(hole.xMm),
    lineOf(inPlan(hole.xMm - past, hole.yMm), inPlan(hole.xMm + past, hole.yMm), 'centre'),
  ]
}
