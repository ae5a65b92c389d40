/** Heights that can be made or bought: `lowest` + k · `step`, k from 0 to `rungs` − 1. Any one unit. */
export type Ladder = { readonly lowest: number; readonly step: number; readonly rungs: number }

/** Heights that serve something, both ends included. */
export type HeightWindow = readonly [low: number, high: number]

/** Whole numbers from `first` to `last`; none where `last` is below `first`. */
export type Span = { readonly first: number; readonly last: number }

/** Share of a step. A height this near to an end of a window is inside: decimals are not exact in binary. */
const slackSteps = 1e-6

/** From `lowest` up to the greatest end of a window; no rungs where that lies below. */
export function ladderTo(lowest: number, step: number, windows: readonly HeightWindow[]): Ladder {
  const top = windows.reduce((most, [, high]) => Math.max(most, high), -Infinity)
  return { lowest, step, rungs: top === -Infinity ? 0 : Math.max(0, Math.floor((top - lowest) / step + slackSteps) + 1) }
}

/** The height of a rung, without the noise of binary decimals. */
export const heightOf = ({ lowest, step }: Ladder, rung: number): number => Math.round((lowest + rung * step) * 1e9) / 1e9

/** The rung nearest to a height. */
export const rungOf = ({ lowest, step }: Ladder, height: number): number => Math.round((height - lowest) / step)

/** The rungs that serve a window once `under` is put below them. */
export function rungsIn({ lowest, step, rungs }: Ladder, [low, high]: HeightWindow, under = 0): Span {
  return {
    first: Math.max(0, Math.ceil((low - lowest - under) / step - slackSteps)),
    last: Math.min(rungs - 1, Math.floor((high - lowest - under) / step + slackSteps)),
  }
}

/** What two rungs on each other have to add to, counted in steps above twice the lowest height. */
export function rungSumsIn({ lowest, step, rungs }: Ladder, [low, high]: HeightWindow): Span {
  return {
    first: Math.max(0, Math.ceil((low - 2 * lowest) / step - slackSteps)),
    last: Math.min(2 * (rungs - 1), Math.floor((high - 2 * lowest) / step + slackSteps)),
  }
}

/** Whether a height is up to a window, with the slack of the ladder. */
export const isReached = ({ step }: Ladder, [low]: HeightWindow, height: number): boolean => height >= low - slackSteps * step

/** Whether a height lies in a window, with the slack of the ladder. */
export const isInside = (ladder: Ladder, window: HeightWindow, height: number): boolean =>
  isReached(ladder, window, height) && height <= window[1] + slackSteps * ladder.step

/** Whether two heights are one. */
export const areEqual = ({ step }: Ladder, a: number, b: number): boolean => Math.abs(a - b) <= slackSteps * step
