import { Refusal } from '#model/refusal.ts'
import { calc, calculations, type RefusedCase } from '#tasks/calc.ts'
import { askHere } from '#tasks/make/ask-here.ts'
import { type AskSlow, type SlowName, slowCalculations } from '#tasks/make/slow-calculations.ts'

/** What each calculation answers, in a line: those answered at once and those that take seconds. */
export const calculationTitles: readonly (readonly [name: string, title: string])[] =
  Object.entries({ ...calculations, ...slowCalculations }).map(([name, { title }]) => [name, title])

/**
 * As `calc`, and those calculations that take seconds.
 *
 * @param slowly  who answers those; left out: this thread
 * @throws Refusal `unknown-calculation`; for a single case whatever the calculation refuses
 */
export async function askCalc(name: string, input: unknown, slowly: AskSlow = askHere, signal?: AbortSignal): Promise<unknown> {
  if (!isSlow(name)) {
    if (!Object.hasOwn(calculations, name)) throw new Refusal('unknown-calculation', { given: name.slice(0, 60), needed: calculationTitles.map(([known]) => known) })
    return calc(name, input)
  }
  if (!Array.isArray(input)) return await slowly(name, input, signal)
  const answers: unknown[] = []
  for (const one of input) answers.push(await slowly(name, one, signal).catch(refusedCase))
  return answers
}

const isSlow = (name: string): name is SlowName => Object.hasOwn(slowCalculations, name)

function refusedCase(error: unknown): RefusedCase {
  if (!(error instanceof Refusal)) throw error
  return { refused: error.code, facts: error.facts }
}
