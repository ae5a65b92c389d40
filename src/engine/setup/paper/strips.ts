/** Where the strips lie, in the order in which equally likely ones are named. */
export const corners = ['fixed-left', 'fixed-right', 'moving-left', 'moving-right'] as const
export type Corner = (typeof corners)[number]

/** Held: it does not pull out. */
export const stripWords = ['held', 'loose'] as const
export type Strips = { readonly [corner in Corner]: (typeof stripWords)[number] }

/** The corner straight across, at the same end. */
export const acrossFrom = (corner: Corner): Corner => byAcross[corner]

/** The corner at the other end of the same jaw. */
export const alongFrom = (corner: Corner): Corner => byAlong[corner]

const byAcross: { readonly [corner in Corner]: Corner } =
  { 'fixed-left': 'moving-left', 'fixed-right': 'moving-right', 'moving-left': 'fixed-left', 'moving-right': 'fixed-right' }
const byAlong: { readonly [corner in Corner]: Corner } =
  { 'fixed-left': 'fixed-right', 'fixed-right': 'fixed-left', 'moving-left': 'moving-right', 'moving-right': 'moving-left' }
