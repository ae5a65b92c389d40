import type { Checked } from '#engine/inspect/checked.ts'
import type { UseVerdict } from '#engine/inspect/uses-proved.ts'

/** What the check as a whole is judged by: of two bars both and their difference, of one bar it alone. */
export type Judged = {
  /** Coarsest use first; empty: nothing can be judged. */
  readonly uses: readonly UseVerdict[]
  readonly provedToUm: number | null
  /** The largest of what was found, parallelism and difference alike. */
  readonly foundUm: number | null
}

export function judgedOf({ bars, pair, pairUses }: Checked): Judged {
  const parallel = bars.flatMap((bar) => bar.shape?.parallelismUm ?? bar.turnOver?.parallelismUm ?? [])
  const apart = pair === null ? [] : [Math.min(pair.worstAsLaidUm ?? Infinity, pair.worstTurnedUm ?? Infinity)].filter(Number.isFinite)
  const proved = [...bars.map((bar) => bar.provedToUm), ...(pair === null ? [] : [pair.provedToUm ?? null])]
  return {
    uses: pair ? pairUses : worstOf(bars.map(({ uses }) => uses)),
    provedToUm: proved.length === 0 || proved.some((um) => um === null) ? null : Math.max(...proved.map(Number)),
    foundUm: parallel.length + apart.length === 0 ? null : Math.max(...parallel, ...apart),
  }
}

const order: readonly UseVerdict['verdict'][] = ['proved', 'not-proved', 'out']

/** Use by use the worst of several bars; none where one of them was not judged. */
function worstOf(judged: readonly (readonly UseVerdict[])[]): readonly UseVerdict[] {
  if (judged.length === 0 || judged.some((uses) => uses.length === 0)) return []
  return judged[0]!.map(({ use }) => judged.map((uses) => uses.find((one) => one.use === use)!).reduce((worst, one) => (order.indexOf(one.verdict) > order.indexOf(worst.verdict) ? one : worst)))
}
