/** Height lifts the part, thickness is the flat size, length the long one. */
export type BarSize = { readonly heightMm: number; readonly thicknessMm: number; readonly lengthMm: number }
