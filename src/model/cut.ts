import type { Rect } from '#model/part.ts'

export const milledKinds = ['face', 'step', 'slot'] as const
export const cutKinds = ['face', 'step', 'slot', 'hole', 'end'] as const
export const tools = ['drill', 'tap', 'ream', 'spot', 'countersink'] as const
export type Tool = (typeof tools)[number]

/** Face, edge or step, slot: milled to a depth below the part's raw top. */
export type MilledCut = {
  readonly kind: (typeof milledKinds)[number]
  readonly depthMm: number
  /** Whether the cutter passes over a jaw; true unless said otherwise. */
  readonly overJaw: boolean
  /** How far below the part a cut goes that is meant to come out. */
  readonly runThroughMm: number
  /** Its place in the plan, where known; may reach over the part's edge. */
  readonly rect?: Rect
}

/**
 * A hole made in this setup; `depthMm` is given for a blind one.
 *
 * `xMm` null: only its distance across is known, so it counts as standing anywhere along the part.
 */
export type Hole = {
  readonly kind: 'hole'
  readonly xMm: number | null
  readonly yMm: number
  readonly diameterMm: number
  readonly tool: Tool
  readonly through: boolean
  readonly depthMm?: number
  readonly runThroughMm: number
  readonly pointAngleDeg: number
  readonly pitchMm?: number
  readonly leadThreads: number
}

/** Squaring an end of the part past the jaws: every bar must end inside the new face. */
export type EndCut = { readonly kind: 'end'; readonly side: 'left' | 'right'; readonly stockMm: number }

export type Cut = MilledCut | Hole | EndCut
