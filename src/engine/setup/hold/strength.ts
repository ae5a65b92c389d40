/** Elastic modulus of hardened steel. @source STRENGTH */
export const steelMPa = 210_000

/** µm a block gets shorter, N/µm it takes, and the stress in it. E in MPa. @source STRENGTH */
export function compressionOf(block: { readonly thicknessMm: number; readonly lengthMm: number; readonly heightMm: number; readonly forceN: number; readonly eMPa: number }) {
  const areaMm2 = block.thicknessMm * block.lengthMm, stiffnessNPerUm = (block.eMPa * areaMm2) / block.heightMm / 1000
  return { stiffnessNPerUm, shorteningUm: block.forceN / stiffnessNPerUm, stressMPa: block.forceN / areaMm2 }
}

/**
 * What a thin bar on edge, or a thin part between the jaws, bears for each mm of length before it gives way sideways (wide
 * column, `hinged`: also a flat foot with a top that can slide), before it yields, and how far beside the middle it tips.
 *
 * @source STRENGTH
 */
export function onEdgeOf(bar: { readonly heightMm: number; readonly thicknessMm: number; readonly eMPa: number; readonly nu: number; readonly yieldMPa: number }) {
  const hingedNPerMm = (Math.PI ** 2 * bar.eMPa * bar.thicknessMm ** 3) / (12 * (1 - bar.nu ** 2) * bar.heightMm ** 2)
  return {
    hingedNPerMm, heldNPerMm: 4 * hingedNPerMm, freeTopNPerMm: hingedNPerMm / 4, yieldNPerMm: bar.yieldMPa * bar.thicknessMm,
    tipsAtMm: bar.thicknessMm / 2, liftsAtMm: bar.thicknessMm / 6,
  }
}

/** A beam on two supports, pressed in its middle: how far it goes down there, and the stress. @source STRENGTH */
export function beamOf(beam: { readonly widthMm: number; readonly depthMm: number; readonly spanMm: number; readonly forceN: number; readonly eMPa: number }) {
  const inertiaMm4 = (beam.widthMm * beam.depthMm ** 3) / 12
  return {
    midDeflectionUm: (1000 * beam.forceN * beam.spanMm ** 3) / (48 * beam.eMPa * inertiaMm4),
    midStressMPa: (beam.forceN * beam.spanMm * beam.depthMm) / (8 * inertiaMm4),
  }
}

/**
 * How far the middle of a strut goes sideways that is pressed beside its middle line, its ends free to turn:
 * e (sec(π/2 √(F/Fe)) − 1), Fe the force under which it gives way. Null from that force on: it goes as far as it is let.
 *
 * @source STRENGTH
 */
export function bowOf(strut: { readonly besideMm: number; readonly forceN: number; readonly givesWayN: number }): { readonly midDeflectionUm: number } | null {
  const share = strut.forceN / strut.givesWayN
  return share >= 1 ? null : { midDeflectionUm: 1000 * strut.besideMm * (1 / Math.cos((Math.PI / 2) * Math.sqrt(share)) - 1) }
}
