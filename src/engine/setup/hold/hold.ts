import { beamOf, bowOf, onEdgeOf } from '#engine/setup/hold/strength.ts'

export const contacts = ['flat', 'line'] as const

/** A clamped part and what cuts it. Forces in N as they act, without any factor. */
export type HoldQuestion = {
  readonly betweenJawsMm: number
  readonly alongJawsMm: number
  readonly heightMm: number
  /** Null: the part is held over its whole length. */
  readonly jawWidthMm: number | null
  readonly gripMm: number
  readonly stickOutMm: number
  /** `line`: a rod between jaw and part, a round part, a shallow step. */
  readonly contact: (typeof contacts)[number]
  readonly clampN: number
  readonly friction: number
  readonly milling: { readonly forceN: number; readonly pullN: number } | null
  /** `carried`: a bar or the bed is below the hole. `betweenBarsMm`: free between two bars; null: not asked. */
  readonly drilling: { readonly thrustN: number; readonly torqueNm: number; readonly carried: boolean; readonly betweenBarsMm: number | null } | null
  readonly factors: { readonly milling: number; readonly drilling: number }
  readonly eMPa: number
  readonly nu: number
  /** Null: stresses are given, not judged. */
  readonly yieldMPa: number | null
  /** What the part may come out out of parallel, for the bow of its clamping; null: the bow is given, not judged. */
  readonly toleranceUm: number | null
}

export const limits = ['slip', 'pull-up', 'tipping', 'drill-torque', 'drill-thrust', 'part-buckles', 'part-bows', 'part-bends', 'jaw-pressure'] as const
/** What is needed, the shop's factor in it, and what there is: of one unit, N, N m, MPa or µm. */
export type Limit = { readonly limit: (typeof limits)[number]; readonly needed: number; readonly has: number; readonly ratio: number }

/** `least`: the limit with the smallest ratio; null where nothing was computed. Below 1 there is less than was asked for. */
export type Hold = {
  readonly limits: readonly Limit[]
  readonly least: Limit | null
  readonly pressureMPa: number | null
  /** How far the drill bends the part down between two bars, in its middle. */
  readonly bendsUm: number | null
  /** How far the jaws bow a part lower than wide up in its middle, at most; null: it is no such part, or it gives way first. */
  readonly bowsUm: number | null
  readonly notComputed: readonly string[]
}

/**
 * What a clamped part can be cut with: friction at both jaws against cutting force, tipping across the jaws, drill, and the
 * part under its own clamping. Friction used against lifting is not counted again against tipping.
 *
 * Line contact is not computed.
 *
 * @source HOLD-RULES STRENGTH
 */
export function holdOf(question: HoldQuestion): Hold {
  if (question.contact === 'line') return { limits: [], least: null, pressureMPa: null, bendsUm: null, bowsUm: null, notComputed: ['line-contact', ...always] }
  const all = [...millingLimits(question), ...drillingLimits(question), ...partLimits(question)]
  return {
    limits: all, least: all.length === 0 ? null : all.reduce((least, one) => (one.ratio < least.ratio ? one : least)),
    pressureMPa: pressureOf(question), bendsUm: bending(question)?.midDeflectionUm ?? null, bowsUm: bowing(question)?.midDeflectionUm ?? null,
    notComputed: [...(question.milling === null ? ['milling'] : []), ...(question.drilling === null ? ['drilling'] : []), ...(question.yieldMPa === null ? ['yielding'] : []), ...always],
  }
}

/** What no answer considers. */
const always = ['overhang', 'chatter', 'breaking-through', 'thin-walls', 'castings'] as const

const limitOf = (limit: Limit['limit'], needed: number, has: number): Limit[] => (needed <= 0 ? [] : [{ limit, needed, has, ratio: has / needed }])

function millingLimits({ milling, clampN, friction, factors, gripMm, stickOutMm, betweenJawsMm }: HoldQuestion): readonly Limit[] {
  if (milling === null) return []
  const gripN = 2 * friction * clampN, liftN = factors.milling * milling.pullN, left = Math.max(0, 1 - liftN / gripN)
  return [
    ...limitOf('slip', factors.milling * Math.hypot(milling.forceN, milling.pullN), gripN),
    ...limitOf('pull-up', liftN, gripN),
    ...limitOf('tipping', (factors.milling * milling.forceN * (Math.max(0, stickOutMm) + gripMm / 2)) / 1000, (clampN * (gripMm / 3 + friction * left * betweenJawsMm)) / 1000),
  ]
}

function drillingLimits({ drilling, clampN, friction, factors, betweenJawsMm }: HoldQuestion): readonly Limit[] {
  if (drilling === null) return []
  return [
    // each jaw rubs at half the part's width from the middle
    ...limitOf('drill-torque', factors.drilling * drilling.torqueNm, (friction * clampN * betweenJawsMm) / 1000),
    ...(drilling.carried ? [] : limitOf('drill-thrust', factors.drilling * drilling.thrustN, 2 * friction * clampN)),
  ]
}

function partLimits(question: HoldQuestion): readonly Limit[] {
  const { clampN, yieldMPa, toleranceUm } = question, beam = bending(question), bow = bowing(question)
  return [
    ...(isPlate(question) ? limitOf('part-buckles', clampN, givesWayN(question)) : []),
    ...(bow === null || toleranceUm === null ? [] : limitOf('part-bows', bow.midDeflectionUm, toleranceUm)),
    ...(beam === null || yieldMPa === null ? [] : limitOf('part-bends', question.factors.drilling * beam.midStressMPa, yieldMPa)),
    ...(yieldMPa === null ? [] : limitOf('jaw-pressure', pressureOf(question), yieldMPa)),
  ]
}

/** A part lower than wide is a plate pushed at its edges, free to turn at both. */
const isPlate = ({ heightMm, betweenJawsMm }: HoldQuestion): boolean => heightMm < betweenJawsMm
const givesWayN = (question: HoldQuestion): number =>
  heldLengthMm(question) * onEdgeOf({ heightMm: question.betweenJawsMm, thicknessMm: question.heightMm, eMPa: question.eMPa, nu: question.nu, yieldMPa: question.yieldMPa ?? 0 }).hingedNPerMm

/** Gripped below its middle, a plate bows up: the jaws press at half the grip. */
function bowing(question: HoldQuestion): ReturnType<typeof bowOf> {
  const { heightMm, gripMm, clampN } = question
  return isPlate(question) ? bowOf({ besideMm: Math.max(0, (heightMm - gripMm) / 2), forceN: clampN, givesWayN: givesWayN(question) }) : null
}

const heldLengthMm = ({ alongJawsMm, jawWidthMm }: HoldQuestion): number => Math.min(alongJawsMm, jawWidthMm ?? alongJawsMm)
const pressureOf = (question: HoldQuestion): number => question.clampN / (question.gripMm * heldLengthMm(question))

/** The part between two bars under the drill; no more of its length counts than the span, the rest hardly helps. Common practice, no source. */
function bending({ drilling, alongJawsMm, heightMm, eMPa }: HoldQuestion): ReturnType<typeof beamOf> | null {
  if (drilling?.betweenBarsMm === null || drilling?.betweenBarsMm === undefined || drilling.thrustN <= 0) return null
  return beamOf({ widthMm: Math.min(alongJawsMm, drilling.betweenBarsMm), depthMm: heightMm, spanMm: drilling.betweenBarsMm, forceN: drilling.thrustN, eMPa })
}
