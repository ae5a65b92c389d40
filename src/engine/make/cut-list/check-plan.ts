import { type CutProblem, fits, type Plan } from '#engine/make/cut-list/cut-problem.ts'

/** Counts a plan over in whole numbers. @throws Error where a piece is missing or cut twice, does not fit, or stock is used that is not there: a fault of ours */
export function checkPlan(problem: CutProblem, { cost, used }: Plan): void {
  const { kinds, stocks } = problem, cut = kinds.map(() => 0), taken = stocks.map(() => 0)
  const wrong = (what: string): never => { throw new Error(`a cut plan is wrong: ${what}`) }
  for (const { pattern: { stock, kinds: of, counts }, times } of used) {
    if (!Number.isInteger(times) || times < 1) wrong(`a pattern is cut ${times} times`)
    taken[stock]! += times
    let size = 0
    of.forEach((kind, k) => {
      if (!Number.isInteger(counts[k]!) || counts[k]! < 1 || !fits(problem, stock, kind)) wrong(`kind ${kind} does not fit stock ${stock}`)
      cut[kind]! += times * counts[k]!
      size += counts[k]! * kinds[kind]!.size
    })
    if (size > stocks[stock]!.capacity) wrong(`${size} do not fit stock ${stock}`)
  }
  kinds.forEach(({ count }, kind) => { if (cut[kind] !== count) wrong(`${cut[kind]} of kind ${kind} are cut`) })
  stocks.forEach(({ most }, stock) => { if (taken[stock]! > most) wrong(`stock ${stock} is used up`) })
  if (cost !== stocks.reduce((sum, stock, s) => sum + stock.cost * taken[s]!, 0)) wrong(`it does not cost ${cost}`)
}
