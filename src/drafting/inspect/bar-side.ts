import { boxOf, lineOf, pathOf, shapeOf, textOf } from '#drafting/items.ts'
import type { Item, Point } from '#drafting/scene.ts'

const unknownUpMm = 6
const namedUpMm = 5.2

/** A bar from the side with its marked end to the left, to scale; above `mostUpMm` its height is broken: what counts here is its length. */
export function barSide(
  { heightMm, lengthMm }: { readonly heightMm: number | null; readonly lengthMm: number },
  { leftMm, topMm, scale, markedEnd, mostUpMm = 12 }: { readonly leftMm: number; readonly topMm: number; readonly scale: number; readonly markedEnd: string; readonly mostUpMm?: number },
): { readonly items: readonly Item[]; readonly upMm: number; readonly nameBelow: boolean } {
  const trueMm = heightMm === null ? unknownUpMm : heightMm * scale, upMm = Math.min(mostUpMm, trueMm), rightMm = leftMm + lengthMm * scale, endMm = topMm + upMm
  const nameBelow = upMm < namedUpMm, markMm = Math.min(3, upMm)
  return {
    upMm, nameBelow,
    items: [
      boxOf([leftMm, topMm], [rightMm, endMm], trueMm > upMm + 1e-6 ? 'none' : 'bar', 'bar'),
      ...(trueMm > upMm + 1e-6 ? broken([leftMm, topMm], [rightMm, endMm]) : []),
      shapeOf([[leftMm, topMm], [leftMm, topMm + markMm], [leftMm + markMm, topMm]], 'bar', 'ink'),
      ...(nameBelow ? [] : [textOf([leftMm + 4.2, topMm + Math.min(2.9, upMm / 2)], markedEnd, { tone: 'bar' })]),
    ],
  }
}

/** Its outline with a strip of the height taken out between two break lines. */
function broken([x0, y0]: Point, [x1, y1]: Point): readonly Item[] {
  const middle = y0 + (y1 - y0) * 0.72, gap = 0.6
  const breakLine = (y: number): readonly Point[] => {
    const at = x0 + (x1 - x0) / 2
    return [[x0 - 1.2, y], [at - 2, y], [at - 1, y - 0.9], [at + 1, y + 0.9], [at + 2, y], [x1 + 1.2, y]]
  }
  return [
    lineOf([x0, y0], [x1, y0], 'bar'), lineOf([x0, y1], [x1, y1], 'bar'),
    ...[x0, x1].flatMap((x) => [lineOf([x, y0], [x, middle - gap], 'bar'), lineOf([x, middle + gap], [x, y1], 'bar')]),
    pathOf(breakLine(middle - gap), 'thin'), pathOf(breakLine(middle + gap), 'thin'),
  ]
}
