/*
 * Load, press depth and set of a bar under a press, as multiples of those at which its skin first yields: simply supported, load in
 * the middle, rectangular section, elastic then perfectly plastic, small deflection.
 *
 * Told by the share of the half depth at mid span that has yielded: 0 at first yield, 1 at the plastic hinge.
 */

/** @source BENDING */
export const loadAt = (yielded: number): number => 1 + yielded - yielded ** 2 / 2

/**
 * What stays once the load is off: depth less load, with the triple root at first yield taken out, as the difference of the two
 * has no digits left there.
 *
 * @source BENDING
 */
export function setAt(yielded: number): number {
  const core = 1 - yielded
  return (yielded ** 3 * (13 + 3 * core - 3 * core ** 2 - core ** 3)) / (8 * loadAt(yielded) ** 2)
}

/** Springback is the load times the depth at first yield. @source BENDING */
export const depthAt = (yielded: number): number => loadAt(yielded) + setAt(yielded)

/** At the hinge: beyond it the bar folds under the same load. @source BENDING */
export const hinge = { load: 1.5, depth: 20 / 9, set: 13 / 18 } as const

/** Where something that rises with the yielded share has a value; 0 or 1 where it lies outside. */
export function yieldedWhere(rising: (yielded: number) => number, value: number): number {
  let [low, high] = [0, 1]
  if (rising(high) <= value) return high
  for (;;) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) return low
    if (rising(middle) <= value) low = middle
    else high = middle
  }
}
