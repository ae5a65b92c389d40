import type { Cited } from '#model/cited.ts'
import type { CutterData, CutterMaterial } from '#model/cutting-data.ts'
import { type Chip, chipOf } from '#engine/make/cutting/chip.ts'
import { givesWay, type GivesWay } from '#engine/make/cutting/gives-way.ts'
import type { PassPlan } from '#engine/make/cutting/passes.ts'
import { approachMm, feedRate, passMin, powerKw, removalRate, specificForce } from '#engine/make/cutting/rates.ts'
import type { Machine } from '#engine/make/cutting/speed.ts'
import { millingForce } from '#engine/setup/hold/cutting-forces.ts'

export type Cutter = { readonly diameterMm: number; readonly teeth: number; readonly material: CutterMaterial; readonly stickOutMm: number; readonly helixDeg: number; readonly eMPa: number }

/** Side milling of an edge: `depthMm` along the axis of the cutter, `stockMm` across it to come off in all. */
export type CuttingQuestion = {
  /** `assumedMc`: the exponent is not printed and was taken from its neighbours. */
  readonly force: Cited & { readonly kc11MPa: number; readonly mc: number; readonly assumedMc: boolean }
  /** Null: nothing is known of usual speeds and feeds; both are then told. */
  readonly data: CutterData | null
  readonly hardened: boolean
  readonly cutter: Cutter
  readonly machine: Machine
  readonly depthMm: number
  readonly lengthMm: number
  readonly stockMm: number
  readonly roughMm: number
  readonly finishMm: number
  readonly springPass: boolean
  readonly overrunMm: number
  readonly speedMPerMin: number
  readonly rpm: number | null
  readonly feedPerToothMm: number
}

/**
 * `facesMm`: what the cutter is set to take with what the pass before left, on which force, power and chip go by: force of all teeth that
 * may be in at once, at their thickest chip, sharp; `pullN` along the axis, out of the vise for a right-hand helix. `biteMm` is what it
 * takes as it bends, `deflection` what it leaves.
 */
export type Pass = PassPlan & GivesWay & {
  readonly facesMm: number
  readonly chip: Chip
  readonly toothN: number
  readonly forceN: number
  readonly pullN: number
  readonly kcMPa: number
  readonly removalCm3PerMin: number
  readonly cutterKw: number
  readonly motorKw: number
  readonly minutes: number
}

/** What bending leaves of stock at the tip: after finishing, after the spring pass at the same setting; the taper of the wall last. */
export type Wall = { readonly finishUm: number; readonly springUm: number | null; readonly leftUm: number; readonly taperUm: number }

/** mm. Thinner, the edge rubs and the power law overstates: it is then taken at this. Common practice, no source. @source CUTTING-FORCE */
export const leastChipMm = 0.01

/** One pass along the edge, where the one before left something. @source CUTTING-FORCE CUTTER-BENDING */
export function passOf({ force, cutter, machine, depthMm, lengthMm, overrunMm }: CuttingQuestion, one: PassPlan, leftMm: number, rpm: number, feedPerToothMm: number): Pass {
  const { diameterMm, teeth, helixDeg } = cutter, facesMm = Math.min(diameterMm, one.widthMm + leftMm), chip = chipOf(facesMm, diameterMm, feedPerToothMm), feedMmPerMin = feedRate(rpm, teeth, feedPerToothMm)
  const cut = { kc11MPa: force.kc11MPa, mc: force.mc, depthMm, widthMm: facesMm, diameterMm, teeth, feedPerToothMm, helixDeg }, { toothN, forceN, pullN } = millingForce(cut)
  const kcMPa = specificForce(force.kc11MPa, force.mc, Math.max(chip.meanMm, leastChipMm)), removalCm3PerMin = removalRate(depthMm, facesMm, feedMmPerMin), cutterKw = powerKw(removalCm3PerMin, kcMPa)
  return {
    ...one, facesMm, chip, toothN, forceN, pullN, kcMPa, removalCm3PerMin, cutterKw, motorKw: cutterKw / machine.efficiency,
    ...givesWay(cut, cutter), minutes: passMin(lengthMm + approachMm(facesMm, diameterMm) + overrunMm, feedMmPerMin),
  }
}
