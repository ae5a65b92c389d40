import { answerCutBars } from '#engine/make/cut-bars/answer-cut-bars.ts'
import { answerCutPlate } from '#engine/make/cut-plate/answer-cut-plate.ts'
import type { CutTools } from '#engine/make/cut-list/cut.ts'

/** Calculations that may take seconds, and a solver. */
export const slowCalculations = {
  'cut-bars': { title: 'Pieces out of stock lengths, with the least stock, and how far that is proven.', answer: answerCutBars },
  'cut-plate': { title: 'Pieces out of the shortest plate, in strips, and how far that is proven.', answer: answerCutPlate },
} as const satisfies { readonly [name: string]: { readonly title: string; readonly answer: (raw: unknown, tools: CutTools) => unknown } }

export type SlowName = keyof typeof slowCalculations

/** One case to one answer. Where the signal aborts, nobody waits for the answer any more. */
export type AskSlow = (name: SlowName, raw: unknown, signal?: AbortSignal) => Promise<unknown>
