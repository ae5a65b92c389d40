import type { CheckMethod } from '#model/check-methods.ts'

/**
 * How much wider local heights found by turning over, and their differences, spread than single readings do, at most: each is the
 * readings of both faces less the line the bar lay on, which two further readings set. 1 for every other method.
 *
 * @source TURN-OVER-MODEL
 */
export const turnOverGrows = (method: CheckMethod): number => (method === 'turn-over' ? Math.sqrt(3) : 1)
