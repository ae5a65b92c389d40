/** How far a bar may be relied on today. `drill bar` may be cut into; `in work` is being made. */
export const trusts = ['trusted', 'look first', 'drill bar', 'in work', 'gone'] as const
export type Trust = (typeof trusts)[number]

/** Whether there is a finished bar at all: not being made, and not gone. */
export const isFinished = (trust: Trust): boolean => trust !== 'in work' && trust !== 'gone'
/** Whether it may carry a part on finished faces: whatever is finished and not for drilling into. */
export const mayCarry = (trust: Trust): boolean => isFinished(trust) && trust !== 'drill bar'

/** Of a size: measured here by a check, or marked (engraved, or printed on the box). */
export const standings = ['measured', 'marked'] as const
export type Standing = (typeof standings)[number]

/** Where a bar is now: in this vise, in its slot, or out. */
export const whereabouts = ['here', 'slot', 'out'] as const
export type Whereabouts = (typeof whereabouts)[number]

/** Departure from `heightMm` in µm at a station, x in mm from the marked end. */
export type HeightDeparture = readonly [xMm: number, um: number]

export type KnownHeight = { readonly check: string; readonly uUm: number; readonly uAloneUm: number }

/** A bar as the setup computes with it. Height is the standing size, thickness the flat, length the long one. */
export type Bar = {
  readonly id: string
  readonly heightMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
  /** Bars that share this id may stand as a pair; left out: an odd bar. */
  readonly mates?: string
  readonly trust: Trust
  readonly standing: Standing
  readonly thicknessStanding: Standing
  readonly where: Whereabouts
  /** How well its height is known: by which check, with which standard uncertainty, and what of it a bar of the same check does not share. */
  readonly known?: KnownHeight
  /** It was on a magnetic chuck, and nobody has said that it was demagnetised since. */
  readonly magnetised?: true
  /** Used by seat and tilt only. */
  readonly heightsUm?: readonly HeightDeparture[]
}
