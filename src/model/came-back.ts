/** How bars came back, as whoever takes them in sees it. */
export const cameBacks = ['fine', 'nicked', 'drilled', 'not looked at'] as const
export type CameBack = (typeof cameBacks)[number]
