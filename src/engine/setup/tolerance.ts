/** mm. Two lengths nearer than this are equal: touching is clear, equal is inside, exactly fitting fits. */
export const touchMm = 1e-6

/** mm. A bar that stands this near to where it was wanted was not moved; keeps rounding out of the status. */
export const movedMm = 1e-5
