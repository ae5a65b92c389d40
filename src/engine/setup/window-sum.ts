import { geometrySources, rulesSources, tapSources } from '#engine/setup/sum-sources.ts'
import type { Hole } from '#model/cut.ts'
import type { AtSeat, LowReason, Window } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import { deepestOverJawMm, furthestBelowMm, isMilled, reachBelowMm, tipLengthMm } from '#engine/setup/reach.ts'
import { grippingJawMm, limitsFromBelow, lowLimitsOf, type WindowQuestion } from '#engine/setup/window.ts'

/** How each number of a window came about. Formula keys are those of the words; limits that nothing asks for are left out. */
export function sumOfWindow(question: WindowQuestion, window: Window): readonly Sum[] {
  const { vise, part, wishes } = question, { heightMm } = part, jawMm = vise.jawHeightMm, gripJawMm = grippingJawMm(vise)
  const round = part.shape === 'round', { maxSeatMmByGrip, maxSeatMmByThickness } = window.stickOut
  const { lowMm, highMm, gripWishMm } = window
  return [
    ...lowSums(question, window.lowBecause),
    ...(round || wishes.gripMm !== 'auto' ? [] : [sum('grip-auto', 'gripWishMm', gripWishMm, { heightMm, depthMm: deepestOverJawMm(question.cuts) ?? 0 }, rulesSources)]),
    round
      ? sum('high-contact-line', 'highMm', highMm, { jawHeightMm: gripJawMm, gripLineMm: wishes.gripLineMm, diameterMm: heightMm }, geometrySources)
      : sum('high-grip', 'highMm', highMm, { jawHeightMm: gripJawMm, gripWishMm }, rulesSources),
    sum('width', 'widthMm', window.widthMm, { lowMm, highMm }, rulesSources),
    ...(maxSeatMmByGrip === null ? [] : [sum('stick-out-by-grip', 'maxSeatMmByGrip', maxSeatMmByGrip, { jawHeightMm: gripJawMm, heightMm, stickOutPerGrip: wishes.stickOutPerGrip }, rulesSources)]),
    ...(maxSeatMmByThickness === null ? [] : [sum('stick-out-by-thickness', 'maxSeatMmByThickness', maxSeatMmByThickness,
      { jawHeightMm: gripJawMm, heightMm, betweenJawsMm: part.betweenJawsMm, stickOutPerThickness: wishes.stickOutPerThickness }, rulesSources)]),
    sum('advised-high', 'advisedHighMm', window.advisedHighMm, { highMm, maxSeatMmByGrip, maxSeatMmByThickness }, rulesSources),
    ...giveUpSums(question, window, jawMm, gripJawMm),
  ]
}

/** How grip, stick-out and air at a seat came about. */
export function sumOfAtSeat({ vise, part, cuts }: WindowQuestion, seatMm: number, atSeat: AtSeat): readonly Sum[] {
  const jawHeightMm = vise.jawHeightMm, gripJawMm = grippingJawMm(vise), { heightMm } = part, { stickOutMm, gripMm } = atSeat
  return [
    part.shape === 'round'
      ? sum('grip-round-at-seat', 'gripMm', gripMm, { jawHeightMm: gripJawMm, seatMm, diameterMm: heightMm }, geometrySources)
      : sum('grip-at-seat', 'gripMm', gripMm, { jawHeightMm: gripJawMm, seatMm, heightMm }, rulesSources),
    sum('stick-out-at-seat', 'stickOutMm', stickOutMm, { seatMm, heightMm, jawHeightMm }, rulesSources),
    ...(atSeat.airMm === null ? [] : [sum('air-at-seat', 'airMm', atSeat.airMm, { stickOutMm, depthMm: deepestOverJawMm(cuts) }, rulesSources)]),
    ...(atSeat.stickOutPerGrip === null ? [] : [sum('stick-out-per-grip', 'stickOutPerGrip', atSeat.stickOutPerGrip,
      gripJawMm < jawHeightMm ? { aboveLowerJawMm: stickOutMm + jawHeightMm - gripJawMm, gripMm } : { stickOutMm, gripMm }, rulesSources)]),
  ]
}

const sum = (formula: string, name: string, value: number | null, inputs: Sum['inputs'], sources: readonly string[]): Sum =>
  ({ formula, result: { name, value }, inputs, sources })

/** The limits of the low end, each by the cut that sets it; the one that decides gives `lowMm`. */
function lowSums(question: WindowQuestion, because: LowReason): readonly Sum[] {
  const { vise, part, cuts, wishes } = question, cutterMm = lowLimitsOf(question)['cutter-over-jaw']
  return [
    ...(cutterMm === null ? [] : [sum('low-cutter-over-jaw', because === 'cutter-over-jaw' ? 'lowMm' : 'cutterOverJawMm', cutterMm,
      { jawHeightMm: vise.jawHeightMm, depthMm: deepestOverJawMm(cuts), airMm: wishes.airMm, heightMm: part.heightMm }, rulesSources)]),
    ...sumsFromBelow(question, because),
    ...(because === 'bed' ? [sum('low-bed', 'lowMm', 0, { bedMm: 0 }, rulesSources)] : []),
  ]
}

/** The same for what comes out below alone. */
export function sumsFromBelow(question: Omit<WindowQuestion, 'vise'>, because: string): readonly Sum[] {
  const { part, cuts, wishes } = question, limits = limitsFromBelow(question)
  const limit = (reason: keyof typeof limits, name: string, inputs: Sum['inputs']) =>
    sum(`low-${reason}`, because === reason ? 'lowMm' : name, limits[reason], inputs, rulesSources)
  const hole = deepest(cuts.filter((cut) => cut.kind === 'hole'), part.heightMm), milled = deepest(cuts.filter(isMilled), part.heightMm)
  return [
    ...(hole ? [tipSum(hole), limit('drill-tip', 'drillTipMm', { tipMm: tipLengthMm(hole), runThroughMm: hole.runThroughMm, bedAirMm: wishes.bedAirMm })] : []),
    ...(milled ? [limit('through-cut', 'throughCutMm', { runThroughMm: milled.runThroughMm, bedAirMm: wishes.bedAirMm })] : []),
  ]
}

function tipSum(hole: Hole): Sum {
  const { tool, diameterMm, pointAngleDeg, leadThreads, pitchMm = null } = hole, tipMm = tipLengthMm(hole)
  if (tool === 'drill') return sum('tip-drill', 'tipMm', tipMm, { diameterMm, pointAngleDeg }, geometrySources)
  if (tool === 'tap') return sum('tip-tap', 'tipMm', tipMm, { leadThreads, pitchMm }, tapSources)
  return sum('tip-ream', 'tipMm', tipMm, { tipMm }, rulesSources)
}

/** The cut that reaches furthest below the part, if any comes out there. */
function deepest<Kind extends Parameters<typeof reachBelowMm>[0]>(cuts: readonly Kind[], heightMm: number): Kind | undefined {
  const furthestMm = furthestBelowMm(cuts, heightMm)
  return furthestMm === null ? undefined : cuts.find((cut) => reachBelowMm(cut, heightMm) === furthestMm)
}

function giveUpSums({ part, cuts, wishes }: WindowQuestion, { giveUp, lowMm, highMm }: Window, jawHeightMm: number, gripJawMm: number): readonly Sum[] {
  if (!giveUp) return []
  const belowMm = furthestBelowMm(cuts, part.heightMm)
  return [
    ...(giveUp.gripMm === null ? [] : [sum('give-up-grip', 'giveUp.gripMm', giveUp.gripMm, { jawHeightMm: gripJawMm, lowMm }, rulesSources)]),
    ...(giveUp.airMm === null ? [] : [sum('give-up-air', 'giveUp.airMm', giveUp.airMm, { highMm, jawHeightMm, depthMm: deepestOverJawMm(cuts), heightMm: part.heightMm }, rulesSources)]),
    ...(giveUp.bedAirMm === null ? [] : [sum('give-up-bed-air', 'giveUp.bedAirMm', giveUp.bedAirMm, { highMm, reachBelowMm: belowMm }, rulesSources)]),
    ...(giveUp.runThroughMm === null ? [] : [sum('give-up-run-through', 'giveUp.runThroughMm', giveUp.runThroughMm,
      { highMm, bedAirMm: wishes.bedAirMm, tipMm: highMm - wishes.bedAirMm - giveUp.runThroughMm }, rulesSources)]),
  ]
}
