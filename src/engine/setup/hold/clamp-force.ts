/** The screw of a vise. Left out: friction and form; then the torque is taken at an efficiency. */
export type Screw = {
  readonly leadMm: number
  /** Outer diameter and pitch of the thread, half its flank angle (15 for trapezoidal, 0 for square). Null: efficiency instead. */
  readonly thread: { readonly diameterMm: number; readonly pitchMm: number; readonly flankDeg: number; readonly friction: number; readonly collarRadiusMm: number; readonly collarFriction: number } | null
  readonly efficiency: number
}

/** Of plain vise screws. Low and high: what worked examples and vises with thrust bearings come to. @source VISE-SCREW */
export const commonEfficiency = 0.2, leastEfficiency = 0.129, mostEfficiency = 0.35

/**
 * The force between the jaws that a torque at the screw gives.
 *
 * With the thread known: M = F · dm/2 · (µ sec θ + tan a) / (1 − µ sec θ tan a) + µc F rc, dm = d − p/2, tan a = lead / (π dm).
 *
 * @source VISE-SCREW
 */
export function clampForceN(torqueNm: number, { leadMm, thread, efficiency }: Screw): number {
  const torqueNmm = 1000 * torqueNm
  if (thread === null) return (2 * Math.PI * efficiency * torqueNmm) / leadMm
  const middleMm = thread.diameterMm - thread.pitchMm / 2, rise = leadMm / (Math.PI * middleMm), rub = thread.friction / Math.cos((thread.flankDeg * Math.PI) / 180)
  return torqueNmm / ((middleMm / 2) * ((rub + rise) / (1 - rub * rise)) + thread.collarFriction * thread.collarRadiusMm)
}
