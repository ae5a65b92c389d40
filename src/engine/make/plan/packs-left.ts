import type { Blank } from '#model/blank.ts'
import type { BarLeft, GrindCase, PackDown, PackLeft, Worked } from '#model/make-plan.ts'
import type { Infeeds, Making } from '#model/making.ts'
import type { Actuals, MadeBar } from '#model/make-step.ts'
import { grindOf } from '#engine/make/grind/grind.ts'
import { latest, readOf } from '#engine/make/plan/bars-left.ts'
import { passesOf } from '#engine/rack/regrind/passes.ts'

/**
 * Mates ground in one pack: until they are clean and straight, as `grind` reckons, and down to what was ordered, half of what is left on each side.
 * There the wheel starts at the highest place, half the bow above. The lowest bar and the largest bow say whether all clean up.
 *
 * @source MAKE-RULES GRIND-RULES
 */
export function packsLeft(side: Worked, made: readonly MadeBar[], bars: readonly BarLeft[], blanks: readonly Blank[], { infeeds, leave }: Making, actuals: Actuals): readonly PackLeft[] {
  return [...new Set(made.map(({ matesId }) => matesId))].flatMap((matesId): PackLeft[] => {
    const mates = made.filter((one) => one.matesId === matesId), own = bars.filter((bar) => bar.side === side && mates.some(({ id }) => id === bar.id))
    const size = blanks.find(({ heightMm }) => heightMm === mates[0]!.heightMm)?.stages.find(({ after }) => after === 'rough the edges')?.size
    if (own.length === 0 || size === undefined) return []
    const { finishedMm } = own[0]!, highestMm = most(own.flatMap(({ id, nowMm }) => [nowMm, ...(latest(actuals, id, readOf[side].size) ?? [])])), lowestMm = least(own.map(({ nowMm }) => nowMm))
    const bowMm = most(own.map((bar) => bar.bowMm ?? leave.bowMm)), allowanceMm = Math.max(0, least(own.map(({ perSideMm }) => perSideMm)))
    const grind: GrindCase = {
      sides: side, bars: own.length, ...size, [side === 'edges' ? 'heightMm' : 'thicknessMm']: highestMm, bowMm, cleanUpMm: leave.cleanUpMm, skinMm: leave.skinMm, allowanceMm, stages: infeeds.stages, sparkOut: infeeds.sparkOut,
    }
    const { removal, stages, sweepsPerSide, enough } = grindOf({ ...grind, growthPercent: 0, row: null, hardened: true, wheel: null }), neededMm = removal.neededUm / 1000
    return [{
      matesId, side, bars: own.map(({ id }) => id), grind, shimsMm: own.map((bar) => Math.round((bar.bowMm ?? 0) * 100) / 100),
      clean: { toMm: round(lowestMm - 2 * neededMm), downfeedMm: round(neededMm), passes: stages.map(({ passes }) => passes), passesTotal: sweepsPerSide },
      ordered: enough === true ? downTo(finishedMm, round((highestMm - finishedMm + bowMm) / 2), infeeds) : null,
    }]
  })
}

function downTo(toMm: number, downfeedMm: number, { stages, sparkOut }: Infeeds): PackDown {
  const passes = passesOf(stages.map(({ infeedUm, takesUm }) => ({ infeedPm: Math.round(infeedUm * pmPerUm), takesPm: Math.round(takesUm * pmPerUm) })), Math.round(downfeedMm * 1000 * pmPerUm))
  return { toMm, downfeedMm, passes, passesTotal: passes.reduce((sum, one) => sum + one, 0) + sparkOut }
}

const pmPerUm = 1e6
const most = (list: readonly number[]): number => list.reduce((a, b) => Math.max(a, b), -Infinity)
const least = (list: readonly number[]): number => list.reduce((a, b) => Math.min(a, b), Infinity)
const round = (mm: number): number => Math.round(mm * 1e6) / 1e6
