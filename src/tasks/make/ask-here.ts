import { performance } from 'node:perf_hooks'
import load from 'highs'
import type { CutTools } from '#engine/make/cut-list/cut.ts'
import { solveWith } from '#engine/make/solve-with-highs.ts'
import { type AskSlow, slowCalculations } from '#tasks/make/slow-calculations.ts'

/** In this thread, which is held as long as it takes. */
export const askHere: AskSlow = async (name, raw) => slowCalculations[name].answer(raw, await toolsHere())

let tools: Promise<CutTools> | null = null

/** A clock and HiGHS, loaded once. */
function toolsHere(): Promise<CutTools> {
  return (tools ??= load().then((highs) => ({ now: () => performance.now() / 1000, solve: solveWith(highs) })))
}
