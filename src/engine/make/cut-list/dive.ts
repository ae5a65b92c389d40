import { drawUnit, type Generator } from '#engine/numeric/generator.ts'
import type { CutProblem, Pattern, Plan, Used } from '#engine/make/cut-list/cut-problem.ts'
import { fillUp } from '#engine/make/cut-list/fill-up.ts'
import { generatePatterns } from '#engine/make/cut-list/generate-patterns.ts'
import { Master } from '#engine/make/cut-list/master.ts'

/** Pieces still open from which on the rest is also filled up directly. */
const fillFrom = 60

/**
 * A plan out of the linear programme: what it cuts wholly is fixed, else the pattern it cuts most of, and it is brought to its best again for the
 * rest, until nothing is left or the rest is known to cost too much; then the rest is filled up.
 *
 * @param from    the linear programme at its best for the whole problem; kept as it is but for patterns found on the way
 * @param target  cost that is wished for
 * @param chance  how far the choice may stray from the pattern cut most, 0 to 1
 */
export function dive(problem: CutProblem, from: Master, target: number, chance: number, generator: Generator, isLate: () => boolean): Plan | null {
  const { kinds, stocks } = problem, dearest = Math.max(...stocks.map(({ cost }) => cost))
  const master = new Master(problem, from), open = kinds.map(({ count }) => count), left = stocks.map(({ most }) => most), used: Used[] = []
  let cost = 0, pieces = open.reduce((sum, count) => sum + count, 0)
  master.banWhere(({ stock }) => stock < 0)
  let isSettled = generatePatterns(problem, master, open, false, isLate)
  while (isSettled && pieces > 0 && cost + master.cost() * dearest <= target + 0.02 * dearest) {
    const chosen = choose(master, chance, generator)
    if (chosen.length === 0) break
    for (const { at, times } of chosen) {
      const pattern = master.patterns[at]!, fit = Math.min(times, left[pattern.stock]!, ...pattern.kinds.map((kind, k) => Math.floor(open[kind]! / pattern.counts[k]!)))
      if (fit < 1) continue
      master.fix(at, fit)
      used.push({ pattern, times: fit })
      cost += fit * stocks[pattern.stock]!.cost
      left[pattern.stock]! -= fit
      pattern.kinds.forEach((kind, k) => { open[kind]! -= fit * pattern.counts[k]!; pieces -= fit * pattern.counts[k]!; if (open[kind] === 0) master.close(kind) })
    }
    if (pieces <= fillFrom) {
      const rest = fillUp(problem, open, left)
      if (rest !== null && cost + rest.cost <= target) return { cost: cost + rest.cost, used: [...used, ...rest.used] }
    }
    master.banWhere(({ stock, kinds: of, counts }: Pattern) => stock < 0 || left[stock]! < 1 || of.some((kind, k) => open[kind]! < counts[k]!))
    isSettled = generatePatterns(problem, master, open, false, isLate)
  }
  const rest = fillUp(problem, open, left)
  return rest && { cost: cost + rest.cost, used: [...used, ...rest.used] }
}

/** What is cut wholly, as often as it is; else what is cut most. */
function choose(master: Master, chance: number, generator: Generator): { readonly at: number; readonly times: number }[] {
  const basic = master.basic().filter(({ at, value }) => value > 1e-4 && master.patterns[at]!.stock >= 0)
  const whole = basic.map(({ at, value }) => ({ at, times: Math.floor(value + 1e-3) })).filter(({ times }) => times > 0)
  if (whole.length > 0) return whole
  let best = -1, most = 0
  for (const { at, value } of basic) {
    const score = value * (1 - chance * drawUnit(generator))
    if (score > most) { most = score; best = at }
  }
  return best < 0 ? [] : [{ at: best, times: 1 }]
}
