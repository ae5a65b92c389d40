import type { Cut } from '#model/cut.ts'
import type { Part } from '#model/part.ts'
import type { GiveUp, LowReason, Window } from '#model/setup.ts'
import type { Vise } from '#model/vise.ts'
import type { Wishes } from '#model/wishes.ts'
import { deepestOverJawMm, isMilled, reachBelowMm, tipLengthMm } from '#engine/setup/reach.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** What the window is asked of; the part's sizes in the plan may be null. */
export type WindowQuestion = { readonly vise: Vise; readonly part: Part; readonly cuts: readonly Cut[]; readonly wishes: Wishes }

/** What each reason asks of the seat, in mm up from the bed; null where nothing asks it. The bed asks for 0. */
export type LowLimits = { readonly [reason in Exclude<LowReason, 'bed'>]: number | null }

/** The jaw that limits the grip: the lower of two. The cutter has to clear the higher, `vise.jawHeightMm`. */
export const grippingJawMm = (vise: Vise): number => vise.lowerJawHeightMm ?? vise.jawHeightMm

/** The grip that is asked for, `auto` worked out; null for a round part, which is held along a line. @source SETUP-RULES */
export function gripWishMm({ part, cuts, wishes }: WindowQuestion): number | null {
  if (part.shape === 'round') return null
  if (wishes.gripMm !== 'auto') return wishes.gripMm
  return Math.min(10, 0.6 * (part.heightMm - (deepestOverJawMm(cuts) ?? 0)))
}

/** The lowest seat each reason allows. @source SETUP-RULES GEOMETRY */
export function lowLimitsOf(question: WindowQuestion): LowLimits {
  const { vise, part, cuts, wishes } = question, deepestMm = deepestOverJawMm(cuts)
  return {
    'cutter-over-jaw': deepestMm === null ? null : vise.jawHeightMm + deepestMm + wishes.airMm - part.heightMm,
    ...limitsFromBelow(question),
  }
}

/** The lowest seat for what comes out below, up from a vise bed or a machine table. @source SETUP-RULES GEOMETRY */
export function limitsFromBelow({ part, cuts, wishes }: Omit<WindowQuestion, 'vise'>): Pick<LowLimits, 'drill-tip' | 'through-cut'> {
  const below = (wanted: (cut: Cut) => boolean) => {
    let most: number | null = null
    for (const cut of cuts) {
      const reachMm = wanted(cut) ? reachBelowMm(cut, part.heightMm) : null
      if (reachMm !== null && (most === null || reachMm > most)) most = reachMm
    }
    return most === null ? null : most + wishes.bedAirMm
  }
  return { 'drill-tip': below((cut) => cut.kind === 'hole'), 'through-cut': below(isMilled) }
}

/**
 * The seat heights that serve, up from the vise bed: what sets either end, what to give up when none is left, and the
 * heights up to which the rules of thumb for stick-out are kept.
 *
 * The high end may be below zero. A width of zero (within `touchMm`) is a window of one height. Without
 * `betweenJawsMm` the rule by thickness is null and left out of the advice.
 *
 * @source SETUP-RULES GEOMETRY
 */
export function windowOf(question: WindowQuestion): Window {
  const { vise, part, wishes } = question
  const round = part.shape === 'round', jawMm = grippingJawMm(vise), gripMm = gripWishMm(question), limits = lowLimitsOf(question)
  const lowMm = Math.max(0, ...reasons.map((reason) => limits[reason] ?? 0))
  const highMm = jawMm - (gripMm ?? wishes.gripLineMm + part.heightMm / 2)
  const maxSeatMmByGrip = round ? null : jawMm - part.heightMm / (1 + wishes.stickOutPerGrip)
  const maxSeatMmByThickness = part.betweenJawsMm === null ? null : jawMm + wishes.stickOutPerThickness * part.betweenJawsMm - part.heightMm
  return {
    lowMm, highMm, widthMm: highMm - lowMm,
    lowBecause: reasons.find((reason) => (limits[reason] ?? -Infinity) >= lowMm - touchMm) ?? 'bed',
    highBecause: round ? 'contact-line' : 'grip',
    advisedHighMm: Math.min(highMm, maxSeatMmByGrip ?? highMm, maxSeatMmByThickness ?? highMm),
    gripWishMm: gripMm,
    giveUp: highMm - lowMm < -touchMm ? giveUpOf(question, limits, lowMm, highMm) : null,
    stickOut: { maxSeatMmByGrip, maxSeatMmByThickness },
  }
}

/** Ties go to the first; the bed comes last. */
const reasons = ['cutter-over-jaw', 'drill-tip', 'through-cut'] as const

/** Which single wish, given up by how much, would leave exactly one height; null where that one alone cannot. */
function giveUpOf({ vise, part, cuts, wishes }: WindowQuestion, limits: LowLimits, lowMm: number, highMm: number): GiveUp {
  const fits = (limitMm: number | null) => limitMm === null || limitMm <= highMm + touchMm
  const cutterMm = limits['cutter-over-jaw'], bedFits = fits(0)
  const drillsFit = fits(limits['drill-tip']) && fits(limits['through-cut'])
  const gripMm = part.shape === 'round' ? 0 : grippingJawMm(vise) - lowMm
  const airMm = cutterMm !== null && bedFits && drillsFit ? highMm - (cutterMm - wishes.airMm) : null
  const fromBelow = fits(cutterMm) && !drillsFit
  const tooLow = cuts.flatMap((cut) => {
    const reachMm = fromBelow ? reachBelowMm(cut, part.heightMm) : null
    return reachMm === null || fits(reachMm + wishes.bedAirMm) ? [] : [{ reachMm, tipMm: cut.kind === 'hole' ? tipLengthMm(cut) : 0 }]
  })
  return {
    gripMm: gripMm > touchMm ? gripMm : null,
    airMm: notNegative(airMm),
    bedAirMm: notNegative(fromBelow ? highMm - Math.max(...tooLow.map(({ reachMm }) => reachMm)) : null),
    runThroughMm: notNegative(fromBelow ? Math.min(...tooLow.map(({ tipMm }) => highMm - wishes.bedAirMm - tipMm)) : null),
  }
}

const notNegative = (valueMm: number | null) => (valueMm === null || valueMm < -touchMm ? null : Math.max(0, valueMm))
