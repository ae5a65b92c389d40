/** Indicator on the plate against a zero, or absolute local height between the anvils. */
export const readMethods = ['compare', 'micrometer'] as const
