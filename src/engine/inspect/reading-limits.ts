import { longestMm } from '#engine/read/raw-object.ts'

/** µm. Beyond it a reading is a slip of the pen. */
export const longestUm = 1000 * longestMm

/** Of numbers that may be of any unit: far beyond any use, near enough that their powers can still be counted with. */
export const mostAnyUnit = 1e15

/** The most that one case may hold of each. */
export const mostBars = 3000, mostStations = 10_000
