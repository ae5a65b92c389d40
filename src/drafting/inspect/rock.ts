import { boxOf, lineOf, shapeOf, textOf } from '#drafting/items.ts'
import { shortened } from '#drafting/lettering.ts'
import type { Item, Point, Scene } from '#drafting/scene.ts'

export type RockData = {
  readonly title: string
  readonly description: string
  readonly label: string
  readonly rock: 'none' | 'rocks' | 'not tried'
  /** What that is called: `lies still`. */
  readonly says: string
  /** The feeler that just goes under, in words; empty: none. */
  readonly feeler: string
  readonly markedEnd: string
}

const heightMm = 34
const edgeMm = 2
const barUpMm = 8
const plateMm = 3.6
/** How far an end is drawn off the plate: a sign, not to scale. */
const liftMm = 2.4

/** A bar on the plate tried for rocking: flat, or standing on its middle with an end up and the feeler under it. */
export function rockDrawing({ title, description, label, rock, says, feeler, markedEnd }: RockData, { widthMm }: { readonly widthMm: number }): Scene {
  const left = edgeMm + 6, right = widthMm - edgeMm - 14, middle = (left + right) / 2, plateY = heightMm - plateMm - 2, lift = rock === 'rocks' ? liftMm : 0
  const top = (x: number): number => plateY - barUpMm - (lift * (x - left)) / (right - left)
  const bar: readonly Point[] = rock === 'rocks'
    ? [[left, top(left)], [right, top(right)], [right, plateY - lift], [middle, plateY], [left, plateY - lift * 0.15]]
    : [[left, plateY - barUpMm], [right, plateY - barUpMm], [right, plateY], [left, plateY]]
  return {
    title, description, widthMm, heightMm, fields: [],
    items: [
      textOf([edgeMm, 4], shortened(label, widthMm / 2 - 4, 4.4, true), { sizeMm: 4.4, bold: true, tone: 'bar' }),
      textOf([widthMm - edgeMm, 4], shortened(says, widthMm / 2, 3.6), { anchor: 'end' }),
      boxOf([edgeMm, plateY], [widthMm - edgeMm, plateY + plateMm], 'none', 'cut-face'), lineOf([edgeMm, plateY], [widthMm - edgeMm, plateY], 'outline'),
      shapeOf(bar, rock === 'not tried' ? 'hidden' : 'bar', 'bar'),
      shapeOf([[left, top(left)], [left, top(left) + 3], [left + 3, top(left + 3)]], 'bar', 'ink'),
      textOf([left + 4.2, plateY - barUpMm / 2], markedEnd, { tone: 'bar' }),
      ...(feeler === '' ? [] : feelerItems(feeler, right, plateY, widthMm)),
      ...(rock === 'rocks' ? [shapeOf([[middle - 1.4, plateY + 3.2], [middle + 1.4, plateY + 3.2], [middle, plateY]], 'outline', 'ink')] : []),
    ],
  }
}

/** The strip of the feeler from the side, in the gap, its thickness above it. */
const feelerItems = (feeler: string, right: number, plateY: number, widthMm: number): readonly Item[] => [
  boxOf([right - 7, plateY - 1.1], [right + 9, plateY - 0.3], 'outline', 'ink'),
  textOf([widthMm - edgeMm, plateY - barUpMm - 6], shortened(feeler, widthMm / 2, 3.6), { anchor: 'end', bold: true }),
  lineOf([right + 6, plateY - barUpMm - 3.5], [right + 6, plateY - 1.6], 'thin'),
]
