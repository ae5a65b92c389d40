import { type Blank, dimensions } from '#model/blank.ts'
import type { Sum } from '#model/sum.ts'

const sizeOf = { height: 'heightMm', thickness: 'thicknessMm', length: 'lengthMm' } as const

/** From the finished size to the blank, for each size that has something left on it; what is the same for all heights once. */
export function blanksSum(blanks: readonly Blank[]): readonly Sum[] {
  const sums = blanks.flatMap(({ finished, sawn, allowances }) => dimensions.flatMap((dimension) => {
    const own = allowances.filter((one) => one.dimension === dimension)
    if (own.length === 0) return []
    const parts = Object.fromEntries(own.map((one, k) => [`allowance${k + 1}Mm`, one.totalMm]))
    return [{ formula: `blank-${dimension}`, result: { name: sizeOf[dimension], value: sawn[sizeOf[dimension]] }, inputs: { finishedMm: finished[sizeOf[dimension]], ...parts }, sources: ['MAKE-RULES'] }]
  }))
  return [...new Map(sums.map((sum) => [JSON.stringify(sum), sum])).values()]
}
