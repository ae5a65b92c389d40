import type { UseVerdict } from '#engine/inspect/uses-proved.ts'

const order = { 'proved': 0, 'not-proved': 1, 'out': 2 } as const

/** Use by use the worst verdict of several; none where one of them was not judged. */
export function worstUses(judged: readonly (readonly UseVerdict[])[]): readonly UseVerdict[] {
  if (judged.some((uses) => uses.length === 0)) return []
  return judged[0]!.map((first) => judged.map((uses) => uses.find(({ use }) => use === first.use)!).reduce((worst, one) =>
    order[one.verdict] > order[worst.verdict] || (one.verdict === worst.verdict && one.pConform < worst.pConform) ? one : worst))
}
