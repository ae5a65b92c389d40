import { type Deflection, deflectionOf } from '#engine/make/cutting/deflection.ts'
import { millingForce, type MillingCut } from '#engine/setup/hold/cutting-forces.ts'

export type GivesWay = { readonly biteMm: number; readonly bendingN: number; readonly deflection: Deflection }

/**
 * How a cutter set to a width gives way: it bends until the force of what it still takes holds it there, and leaves the rest.
 *
 * The force counts the edges that can be in the cut at once at their thickest chip, acting at the tip, so what is left is at most this.
 * With a helix only a short piece of each edge is in: arc · r / tan β of it, as often as the edge winds into the next tooth.
 *
 * @param cut  as it would be if the cutter were stiff
 * @source CUTTING-FORCE CUTTER-BENDING
 */
export function givesWay(cut: MillingCut, bends: { readonly stickOutMm: number; readonly eMPa: number }): GivesWay {
  const cutter = { ...bends, diameterMm: cut.diameterMm }, at = (widthMm: number) => { const bendingN = edgesForceN({ ...cut, widthMm }); return { bendingN, deflection: deflectionOf(bendingN, cutter, cut.depthMm) } }
  let [low, high] = [0, cut.widthMm]
  for (;;) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) break
    if (middle + at(middle).deflection.tipUm / 1000 <= cut.widthMm) low = middle
    else high = middle
  }
  return { biteMm: high, ...at(high) }
}

function edgesForceN(cut: MillingCut): number {
  const { depthMm, widthMm, diameterMm, teeth, helixDeg } = cut, { toothN, teethInCut } = millingForce(cut), straightMm = teethInCut * depthMm
  if (helixDeg === 0) return (toothN / depthMm) * straightMm
  const perMmRad = Math.tan((helixDeg * Math.PI) / 180) / (diameterMm / 2), arcRad = 2 * Math.asin(Math.sqrt(widthMm / diameterMm)), woundTeeth = Math.ceil((depthMm * perMmRad * teeth) / (2 * Math.PI))
  return (toothN / depthMm) * Math.min(straightMm, (arcRad / perMmRad) * woundTeeth)
}
