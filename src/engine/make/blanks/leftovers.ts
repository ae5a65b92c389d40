import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'
import type { BarCut, PlateCut } from '#model/blank.ts'
import type { PlannedWith } from '#model/job-record.ts'
import type { StockForm } from '#model/stock-record.ts'

/** What is left of a stock once it is sawn, `count` of the same; of a plate the longer side is the length. */
export type Leftover = { readonly stockId: string; readonly form: StockForm; readonly lengthMm: number; readonly widthMm: number; readonly count: number }

/** What is worth keeping: as long as the shortest bar, and no narrower than a low one. */
export type Useful = { readonly longMm: number; readonly narrowMm: number }

/** mm. Narrower than this an offcut of plate is swarf. Common practice, no source. @source MAKE-RULES */
const narrowestMm = 10

/** The shortest bar that the shop has or makes is the least that an offcut is good for. `lengthsMm`: of its bars. */
export const usefulFor = (orderedMm: number, lengthsMm: readonly number[]): Useful => ({ longMm: lengthsMm.reduce((least, mm) => Math.min(least, mm), orderedMm), narrowMm: narrowestMm })

/**
 * The ends of stock lengths. Of two kinds of stock that are as long, the one that comes first is cut first. In whole tenths, never more than there is.
 *
 * A stock length of which there is no end is kept too: it is bought, and what is left of it stays.
 */
export function leftOfBars({ stock, pieces, kerf, widthMm }: BarCut, { plan }: Pick<CutBarsAnswer, 'plan'>, useful: Useful): readonly Leftover[] {
  const taken = new Map<string, number>()
  return plan.flatMap((row): Leftover[] => {
    const lengthMm = tenths(row.stockLength - row.pieces.reduce((sum, count, kind) => sum + count * (pieces[kind]![0] + kerf), 0))
    const sources = stock.filter(({ length }) => Math.abs(length - row.stockLength) < sameMm), ends: Leftover[] = []
    for (let left = row.times; left > 0;) {
      const from = sources.find(({ id, available }) => available === null || available > (taken.get(id) ?? 0))
      if (from === undefined) break
      const count = from.available === null ? left : Math.min(left, from.available - (taken.get(from.id) ?? 0))
      taken.set(from.id, (taken.get(from.id) ?? 0) + count)
      left -= count
      if (isUseful(lengthMm, widthMm, useful)) ends.push({ stockId: from.id, form: 'length', lengthMm, widthMm, count })
    }
    return ends
  })
}

/** The rest of a plate below the last strip, and the ends of its strips; none of a plate that is not long enough. */
export function leftOfPlate({ stockId, plateWidth, plateLength, kerf }: PlateCut, { plan, leastPlateLength }: Pick<CutPlateAnswer, 'plan' | 'leastPlateLength'>, useful: Useful): readonly Leftover[] {
  if (leastPlateLength === null || leastPlateLength > plateLength + sameMm) return []
  const rest: Leftover = { stockId, form: 'plate', lengthMm: tenths(plateLength - leastPlateLength - kerf), widthMm: plateWidth, count: 1 }
  const ends = plan.map(([heightMm, pieces]): Leftover => ({ stockId, form: 'plate', lengthMm: heightMm, widthMm: tenths(plateWidth - pieces.reduce((sum, [lengthMm, , count]) => sum + count * (lengthMm + kerf), 0)), count: 1 }))
  return together([rest, ...ends].map(longSideFirst).filter(({ lengthMm, widthMm }) => isUseful(lengthMm, widthMm, useful)))
}

/** The stock as it was planned with; undefined: not among it. */
export const parentOf = ({ stockId }: Leftover, { lengths, plates }: Pick<PlannedWith, 'lengths' | 'plates'>): PlannedWith['plates'][number] | undefined => [...lengths, ...plates].find(({ id }) => id === stockId)

const longSideFirst = (left: Leftover): Leftover => ({ ...left, lengthMm: Math.max(left.lengthMm, left.widthMm), widthMm: Math.min(left.lengthMm, left.widthMm) })
const isUseful = (aMm: number, bMm: number, { longMm, narrowMm }: Useful): boolean => Math.max(aMm, bMm) >= longMm - sameMm && Math.min(aMm, bMm) >= narrowMm - sameMm

function together(all: readonly Leftover[]): readonly Leftover[] {
  return all.reduce<readonly Leftover[]>((sofar, one) => {
    const same = sofar.find(({ lengthMm, widthMm }) => lengthMm === one.lengthMm && widthMm === one.widthMm)
    return same === undefined ? [...sofar, one] : sofar.map((other) => (other === same ? { ...same, count: same.count + one.count } : other))
  }, [])
}

const sameMm = 1e-6
const tenths = (mm: number): number => Math.floor(mm * 10 + sameMm) / 10
