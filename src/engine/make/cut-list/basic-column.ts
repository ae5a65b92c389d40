/**
 * A column of the programme of patterns as one number: a pattern its place, from 0; below 0, three to a row or pattern, what stands
 * for a piece made of nothing, the slack of a row, and a pattern taken back.
 */
export const nothing = (row: number): number => -(3 * row + 1)
export const slackOf = (row: number): number => -(3 * row + 2)
export const takenBack = (pattern: number): number => -(3 * pattern + 3)

export const isPattern = (basic: number): boolean => basic >= 0
export const isNothing = (basic: number): boolean => basic < 0 && basic % 3 === -1
export const isSlack = (basic: number): boolean => basic < 0 && basic % 3 === -2

/** Row of nothing or slack. */
export const rowOf = (basic: number): number => Math.floor((-basic - 1) / 3)
/** Place of a pattern, as it is or taken back. */
export const patternOf = (basic: number): number => (basic < 0 ? -basic / 3 - 1 : basic)
