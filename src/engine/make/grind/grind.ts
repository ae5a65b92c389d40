import { grindingFindings } from '#engine/make/grind/grinding-findings.ts'
import type { Grind, GrindQuestion, GrindStage, StagePasses } from '#engine/make/grind/grinding-job.ts'
import { grindingOrder } from '#engine/make/grind/grinding-order.ts'
import { removalOf } from '#engine/make/grind/removal.ts'
import { sweepMin } from '#engine/make/grind/sweep.ts'
import { passesOf } from '#engine/rack/regrind/passes.ts'

/** mm. A bow beyond it is shimmed, beyond the second turned twice more to finish. Common practice, no source. @source GRIND-RULES */
const shimFromMm = 0.005, turnAgainFromMm = 0.05

/** How bars that bow so much lie: how often they are turned over, and the shim under the hollow in µm; null: none needed. */
export const layingOf = (bowMm: number): Pick<Grind, 'turns' | 'shimUm'> => ({ turns: bowMm > turnAgainFromMm ? 3 : 1, shimUm: bowMm > shimFromMm ? 1000 * bowMm : null })

/**
 * What comes off each side of bars, in which passes, how they lie and in which order.
 *
 * No size is aimed at: what is taken is what makes the sides clean and straight.
 *
 * @source GRIND-RULES
 */
export function grindOf(question: GrindQuestion): Grind {
  const { sides, bars, heightMm, thicknessMm, lengthMm, bowMm, allowanceMm, sparkOut, wheel } = question, onEdge = sides === 'edges', upMm = onEdge ? heightMm : thicknessMm
  const removal = removalOf({ ...question, sizeMm: upMm }), allowanceUm = allowanceMm === null ? null : 1000 * allowanceMm, spareUm = allowanceUm === null ? null : allowanceUm - removal.neededUm
  const stages = stagesFor(question.stages, removal.neededUm), passesPerSide = stages.reduce((sum, { passes }) => sum + passes, 0), sweepsPerSide = passesPerSide + sparkOut
  const acrossMm = bars * (onEdge ? thicknessMm : heightMm) + (bars - 1) * (wheel?.gapMm ?? 0)
  const plan = {
    removal, allowanceUm, enough: spareUm === null ? null : spareUm >= -sameUm, spareUm, stages, passesPerSide, sweepsPerSide, ...layingOf(bowMm),
    blockMm: { leastMm: upMm / 2, belowMm: upMm }, machineMin: wheel === null ? null : 2 * sweepsPerSide * sweepMin(acrossMm, lengthMm, wheel),
  }
  return {
    ...plan, order: grindingOrder(question, plan), findings: grindingFindings(question, plan),
    cautions: ['grinding wheel', ...(onEdge ? ['grinding thin bars' as const] : ['magnetic chuck' as const]), 'stoning'],
  }
}

/** µm. Rounding alone is no shortage. */
const sameUm = 1e-6

function stagesFor(stages: readonly GrindStage[], neededUm: number): readonly StagePasses[] {
  const inPm = (um: number) => Math.round(um * 1e6), neededPm = inPm(neededUm), inStages = stages.map(({ infeedUm, takesUm }) => ({ infeedPm: inPm(infeedUm), takesPm: inPm(takesUm) })), counts = passesOf(inStages, neededPm)
  let restPm = neededPm
  return stages.map(({ infeedUm }, k) => {
    const laterPm = Math.min(restPm, inStages.slice(k + 1).reduce((sum, { takesPm }) => sum + takesPm, 0)), takesPm = restPm - laterPm, passes = counts[k]!
    restPm = laterPm
    return { infeedUm, passes, lastInfeedUm: passes === 0 ? 0 : (takesPm - (passes - 1) * inStages[k]!.infeedPm) / 1e6, takesUm: takesPm / 1e6 }
  })
}
