import type { CutterMaterial } from '#model/cutting-data.ts'

/** Elastic modulus of cutters, from memory. @source CUTTER-BENDING */
export const cutterEMPa: { readonly [material in CutterMaterial]: number } = { carbide: 600_000, HSS: 210_000 }

/** The fluted part bends like a plain rod of so much of its diameter. @source CUTTER-BENDING */
export const stiffShare = 0.8

/** Where a force at its tip leaves a cutter: at the tip, and `depthMm` above it where the cut ends; the difference is the taper of the wall. */
export type Deflection = { readonly tipUm: number; readonly topUm: number; readonly taperUm: number }

/**
 * A cutter as a cantilever held `stickOutMm` from its tip: F x² (3 L − x) / (6 E I) at x from where it is held, I = π d⁴ / 64, d = 0.8 D.
 *
 * Spindle, holder and collet are not in it: what is read is more.
 *
 * @source CUTTER-BENDING
 */
export function deflectionOf(forceN: number, { diameterMm, stickOutMm, eMPa }: { readonly diameterMm: number; readonly stickOutMm: number; readonly eMPa: number }, depthMm: number): Deflection {
  const inertiaMm4 = (Math.PI * (stiffShare * diameterMm) ** 4) / 64, atUm = (xMm: number) => (1000 * forceN * xMm ** 2 * (3 * stickOutMm - xMm)) / (6 * eMPa * inertiaMm4)
  const tipUm = atUm(stickOutMm), topUm = atUm(Math.max(0, stickOutMm - depthMm))
  return { tipUm, topUm, taperUm: tipUm - topUm }
}
