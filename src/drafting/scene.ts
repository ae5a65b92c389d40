/** A point on the paper: x to the right, y down, in millimetres. */
export type Point = readonly [xMm: number, yMm: number]

/**
 * Line kinds as in technical drawing: thick outline, thin (dimensions, leaders), chain-dotted centre line, dashed
 * hidden edge, dashed removal (what a cutter takes away), bar outline, rule of the sheet.
 */
export const lineKinds = ['outline', 'thin', 'centre', 'hidden', 'removal', 'bar', 'rule'] as const
export type LineKind = (typeof lineKinds)[number]

/** What lies inside an outline: nothing, the sheet itself, hatched cut face, pale wash of a bar, wash of what is removed. */
export const fills = ['none', 'sheet', 'cut-face', 'bar', 'removal', 'danger'] as const
export type Fill = (typeof fills)[number]

export const tones = ['ink', 'thin', 'bar', 'danger'] as const
export type Tone = (typeof tones)[number]

export type Item =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly line: LineKind }
  | { readonly kind: 'shape'; readonly points: readonly Point[]; readonly closed: boolean; readonly line: LineKind | 'none'; readonly fill: Fill }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radiusMm: number; readonly line: LineKind; readonly fill: Fill }
  /** `from` and `to` lie on the dimension line; arrows at both ends, the text beside or in a gap of it. */
  | { readonly kind: 'dimension'; readonly from: Point; readonly to: Point; readonly text: string; readonly tone: Tone }
  | {
      readonly kind: 'text'; readonly at: Point; readonly text: string; readonly sizeMm: number
      readonly anchor: 'start' | 'middle' | 'end'; readonly bold: boolean; readonly tone: Tone
      /** Turned counter-clockwise about `at`; 90 reads from the right side of the sheet. */
      readonly turnDeg: number
    }

/** Where an input field lies over the drawing: the middle of its box. The name says which (`height`, `cuts[0].diameter`). */
export type FieldSpot = { readonly name: string; readonly at: Point }

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
