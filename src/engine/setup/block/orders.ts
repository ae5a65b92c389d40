/**
 * Faces of a block: A is the widest long face and comes first, D lies opposite; B and C are the narrower long faces; E and F
 * the ends.
 */
export const faces = ['A', 'B', 'C', 'D', 'E', 'F'] as const
export type Face = (typeof faces)[number]

/** Which face is cut, and which one lies at the fixed jaw meanwhile. */
export type Turn = { readonly cut: Face; readonly fixed: Face }

export const orderNames = ['one face stays', 'roll round'] as const
export type OrderName = (typeof orderNames)[number]

/**
 * The two orders the trade teaches for the long faces. One face stays: both sides are cut with the first face at the fixed
 * jaw, so both are square to it. Roll round: each time the face just cut goes to the fixed jaw, a quarter turn a step.
 *
 * @source MACHINE-SHOP-1887 (roll round, up to the third face) · SETUP-RULES (the rest)
 */
export const ordersOfLongFaces: { readonly [name in OrderName]: readonly Turn[] } = {
  'one face stays': [{ cut: 'A', fixed: 'B' }, { cut: 'B', fixed: 'A' }, { cut: 'C', fixed: 'A' }, { cut: 'D', fixed: 'B' }],
  'roll round': [{ cut: 'A', fixed: 'B' }, { cut: 'B', fixed: 'A' }, { cut: 'D', fixed: 'B' }, { cut: 'C', fixed: 'D' }],
}

/** The ends come last in either order. */
export const endTurns: readonly Turn[] = [{ cut: 'E', fixed: 'A' }, { cut: 'F', fixed: 'A' }]

export const oppositeOf = (face: Face): Face => opposites[face]

const opposites: { readonly [face in Face]: Face } = { A: 'D', B: 'C', C: 'B', D: 'A', E: 'F', F: 'E' }
