/** A point on the paper: x to the right, y down, in millimetres. */
export type Point = readonly [xMm: number, yMm: number]

/**
 * Line kinds as in technical drawing: thick outline, thin (dimensions, leaders, breaks), chain-dotted centre line, dashed
 * hidden edge, dashed removal (what a cutter takes away), bar outline, danger (an outline that must not be so), rule of the sheet.
 */
export type LineKind = 'outline' | 'thin' | 'centre' | 'hidden' | 'removal' | 'bar' | 'danger' | 'rule'

/**
 * What lies inside an outline: nothing, the sheet itself, hatched cut face (`cut-face-back` is hatched the other way, for the
 * part next to it), pale wash of a bar, wash of what is removed, danger, and ink all over.
 */
export type Fill = 'none' | 'sheet' | 'cut-face' | 'cut-face-back' | 'bar' | 'removal' | 'danger' | 'ink'

export type Tone = 'ink' | 'thin' | 'bar' | 'danger'

export type LineItem = { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly line: LineKind }

export type ShapeItem = {
  readonly kind: 'shape'
  readonly points: readonly Point[]
  readonly closed: boolean
  readonly line: LineKind | 'none'
  readonly fill: Fill
}

export type CircleItem = { readonly kind: 'circle'; readonly centre: Point; readonly radiusMm: number; readonly line: LineKind; readonly fill: Fill }

/** The line of a size between `from` and `to`, with its arrows; what it says is lettering or a field of its own. */
export type DimensionItem = {
  readonly kind: 'dimension'
  readonly from: Point
  readonly to: Point
  /** Arrows between the points; or outside, pointing in, where there is no room between them. */
  readonly arrows: 'inside' | 'outside'
  /** Part of the line left open for what stands in it, counted from `from`. */
  readonly gap: readonly [startMm: number, endMm: number] | null
  /** The line runs on from its nearer end to here, to what says its size. */
  readonly tail: Point | null
  readonly tone: 'thin' | 'danger'
}

export type TextItem = {
  readonly kind: 'text'
  /** Half the height of the figures; left end, middle or right end by `anchor`. */
  readonly at: Point
  readonly text: string
  readonly sizeMm: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly bold: boolean
  readonly tone: Tone
  /** Turned counter-clockwise about `at`; 90 reads from the right side of the sheet. */
  readonly turnDeg: 0 | 90
}

export type Item = LineItem | ShapeItem | CircleItem | DimensionItem | TextItem

/**
 * Where something to touch lies over the drawing: the middle and the size of its box. The name says what: `height`,
 * `cuts[0]`, or the id of a bar on the shelf. No two boxes of a scene overlap.
 */
export type FieldSpot = { readonly name: string; readonly at: Point; readonly widthMm: number; readonly heightMm: number }

/** A drawing as data in millimetres of paper; one painter for screen, paper and terminal. */
export type Scene = {
  readonly title: string
  /** The drawing in words, for those who do not see it. */
  readonly description: string
  readonly widthMm: number
  readonly heightMm: number
  readonly items: readonly Item[]
  readonly fields: readonly FieldSpot[]
}
