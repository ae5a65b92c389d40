/** A rectangle in the plan: x along the jaws from the part's left end, y across from the fixed jaw. */
export type Rect = { readonly x0Mm: number; readonly x1Mm: number; readonly y0Mm: number; readonly y1Mm: number }

export const shapes = ['block', 'round'] as const
export type Shape = (typeof shapes)[number]

export const sides = ['machined', 'sawn', 'cast', 'round', 'unknown'] as const
/** The side of the part at the fixed jaw: only a machined one is squared by it. */
export type Side = (typeof sides)[number]

/**
 * The workpiece as it sits. A round part lies along the jaws: between jaws = height = its diameter.
 *
 * A size in the plan that nobody has given yet is null: the answer then says what it leaves open.
 */
export type Part = {
  readonly shape: Shape
  readonly betweenJawsMm: number | null
  readonly alongJawsMm: number | null
  readonly heightMm: number
  /** Where the underside is away. */
  readonly hollows: readonly Rect[]
}
