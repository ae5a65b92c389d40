import type { AtSeat, Window } from '#model/setup.ts'
import type { Sum } from '#model/sum.ts'
import { deepestOverJawMm, furthestBelowMm, isMilled, reachBelowMm, tipLengthMm } from '#engine/setup/reach.ts'
import { grippingJawMm, lowLimitsOf, type WindowQuestion } from '#engine/setup/window.ts'

const rules = ['SETUP-RULES'], geometry = ['GEOMETRY', 'SETUP-RULES'], taps = ['TAP-LEADS', 'SETUP-RULES']

/** How each number of a window came about. Formula keys are those of the words; limits that nothing asks for are left out. */
export function sumOfWindow(question: WindowQuestion, window: Window): readonly Sum[] {
  const { vise, part, wishes } = question, { heightMm } = part, jawMm = vise.jawHeightMm, gripJawMm = grippingJawMm(vise)
  const round = part.shape === 'round', { maxSeatMmByGrip, maxSeatMmByThickness } = window.stickOut
  const { lowMm, highMm, gripWishMm } = window
  return [
    ...lowSums(question),
    sum('low-end', 'lowMm', lowMm, { ...limitInputs(question), bedMm: 0 }, rules),
    ...(round || wishes.gripMm !== 'auto' ? [] : [sum('grip-auto', 'gripWishMm', gripWishMm, { heightMm, depthMm: deepestOverJawMm(question.cuts) ?? 0 }, rules)]),
    round
      ? sum('high-contact-line', 'highMm', highMm, { jawHeightMm: gripJawMm, gripLineMm: wishes.gripLineMm, diameterMm: heightMm }, geometry)
      : sum('high-grip', 'highMm', highMm, { jawHeightMm: gripJawMm, gripMm: gripWishMm }, rules),
    sum('width', 'widthMm', window.widthMm, { lowMm, highMm }, rules),
    ...(maxSeatMmByGrip === null ? [] : [sum('stick-out-by-grip', 'maxSeatMmByGrip', maxSeatMmByGrip, { jawHeightMm: gripJawMm, heightMm, stickOutPerGrip: wishes.stickOutPerGrip }, rules)]),
    ...(maxSeatMmByThickness === null ? [] : [sum('stick-out-by-thickness', 'maxSeatMmByThickness', maxSeatMmByThickness,
      { jawHeightMm: gripJawMm, heightMm, betweenJawsMm: part.betweenJawsMm, stickOutPerThickness: wishes.stickOutPerThickness }, rules)]),
    sum('advised-high', 'advisedHighMm', window.advisedHighMm, { highMm, maxSeatMmByGrip, maxSeatMmByThickness }, rules),
    ...giveUpSums(question, window, jawMm, gripJawMm),
  ]
}

/** How grip, stick-out and air at a seat came about. */
export function sumOfAtSeat({ vise, part, cuts }: WindowQuestion, seatMm: number, atSeat: AtSeat): readonly Sum[] {
  const jawHeightMm = vise.jawHeightMm, gripJawMm = grippingJawMm(vise), { heightMm } = part, { stickOutMm, gripMm } = atSeat
  return [
    part.shape === 'round'
      ? sum('grip-round-at-seat', 'gripMm', gripMm, { jawHeightMm: gripJawMm, seatMm, diameterMm: heightMm }, geometry)
      : sum('grip-at-seat', 'gripMm', gripMm, { jawHeightMm: gripJawMm, seatMm, heightMm }, rules),
    sum('stick-out-at-seat', 'stickOutMm', stickOutMm, { seatMm, heightMm, jawHeightMm }, rules),
    ...(atSeat.airMm === null ? [] : [sum('air-at-seat', 'airMm', atSeat.airMm, { stickOutMm, depthMm: deepestOverJawMm(cuts) }, rules)]),
    ...(atSeat.stickOutPerGrip === null ? [] : [sum('stick-out-per-grip', 'stickOutPerGrip', atSeat.stickOutPerGrip,
      { stickOutMm: stickOutMm + jawHeightMm - gripJawMm, gripMm }, rules)]),
  ]
}

const sum = (formula: string, name: string, value: number | null, inputs: Sum['inputs'], sources: readonly string[]): Sum =>
  ({ formula, result: { name, value }, inputs, sources })

function limitInputs(question: WindowQuestion): Sum['inputs'] {
  const limits = lowLimitsOf(question)
  return { cutterOverJawMm: limits['cutter-over-jaw'], drillTipMm: limits['drill-tip'], throughCutMm: limits['through-cut'] }
}

/** The limits of the low end, each by the cut that sets it. */
function lowSums(question: WindowQuestion): readonly Sum[] {
  const { vise, part, cuts, wishes } = question, limits = lowLimitsOf(question), cutterMm = limits['cutter-over-jaw']
  const sums: Sum[] = []
  if (cutterMm !== null) {
    sums.push(sum('low-cutter-over-jaw', 'cutterOverJawMm', cutterMm,
      { jawHeightMm: vise.jawHeightMm, depthMm: deepestOverJawMm(cuts), airMm: wishes.airMm, heightMm: part.heightMm }, rules))
  }
  const holes = cuts.filter((cut) => cut.kind === 'hole'), hole = deepest(holes, part.heightMm)
  if (hole) {
    const tipMm = tipLengthMm(hole), tap = hole.tool === 'tap'
    const inputs = hole.tool === 'drill' ? { diameterMm: hole.diameterMm, pointAngleDeg: hole.pointAngleDeg }
      : tap ? { leadThreads: hole.leadThreads, pitchMm: hole.pitchMm ?? null } : { tool: hole.tool }
    sums.push(sum(`tip-${hole.tool}`, 'tipMm', tipMm, inputs, hole.tool === 'drill' ? geometry : tap ? taps : rules))
    sums.push(sum('low-drill-tip', 'drillTipMm', limits['drill-tip'], { tipMm, runThroughMm: hole.runThroughMm, bedAirMm: wishes.bedAirMm }, rules))
  }
  const milled = deepest(cuts.filter(isMilled), part.heightMm)
  if (milled) sums.push(sum('low-through-cut', 'throughCutMm', limits['through-cut'], { runThroughMm: milled.runThroughMm, bedAirMm: wishes.bedAirMm }, rules))
  return sums
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
    ...(giveUp.gripMm === null ? [] : [sum('give-up-grip', 'giveUp.gripMm', giveUp.gripMm, { jawHeightMm: gripJawMm, lowMm }, rules)]),
    ...(giveUp.airMm === null ? [] : [sum('give-up-air', 'giveUp.airMm', giveUp.airMm, { highMm, jawHeightMm, depthMm: deepestOverJawMm(cuts), heightMm: part.heightMm }, rules)]),
    ...(giveUp.bedAirMm === null ? [] : [sum('give-up-bed-air', 'giveUp.bedAirMm', giveUp.bedAirMm, { highMm, reachBelowMm: belowMm }, rules)]),
    ...(giveUp.runThroughMm === null ? [] : [sum('give-up-run-through', 'giveUp.runThroughMm', giveUp.runThroughMm,
      { highMm, bedAirMm: wishes.bedAirMm, tipMm: highMm - wishes.bedAirMm - giveUp.runThroughMm }, rules)]),
  ]
}
