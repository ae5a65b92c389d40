/**
 * How much wider the difference of two local heights spreads than that of two readings, at most: each is the readings of both
 * faces less the line the bar lay on, which two further readings set.
 *
 * @source TURN-OVER-MODEL
 */
export const turnOverGrows = Math.sqrt(3)
