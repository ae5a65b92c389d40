import type { Finding } from '#model/finding.ts'
import type { Situation } from '#model/situation.ts'
import { cuttingFindings } from '#engine/make/cutting/cutting-findings.ts'
import { type PassPlan, passWidths } from '#engine/make/cutting/passes.ts'
import { feedRate } from '#engine/make/cutting/rates.ts'
import { type CuttingQuestion, type Pass, passOf, type Wall } from '#engine/make/cutting/side-pass.ts'
import { spindleSpeed } from '#engine/make/cutting/speed.ts'

export type Cutting = {
  readonly rpm: number
  readonly speedMPerMin: number
  readonly feedPerToothMm: number
  readonly feedMmPerMin: number
  readonly passes: readonly Pass[]
  readonly wall: Wall
  readonly minutes: number
  /** The most of all passes. */
  readonly forceN: number
  readonly motorKw: number
  readonly cautions: readonly Situation[]
  readonly findings: readonly Finding[]
}

/**
 * Speed, feed, passes, force, power, and what the cutter's bending leaves on the wall, within what the machine can do.
 *
 * @source CUTTING-FORCE CUTTER-BENDING
 */
export function cuttingOf(question: CuttingQuestion): Cutting {
  const { cutter, machine } = question, speed = spindleSpeed(question.speedMPerMin, question.rpm, cutter.diameterMm, machine, question.data)
  const plan = passWidths(question.stockMm, question.roughMm, question.finishMm), widestMm = Math.max(...plan.map(({ widthMm }) => widthMm))
  const byTableMm = Math.min(question.feedPerToothMm, (machine.mostFeedMmPerMin ?? Infinity) / (speed.rpm * cutter.teeth))
  const feedPerToothMm = withinPower(question, speed.rpm, widestMm, byTableMm), feedMmPerMin = feedRate(speed.rpm, cutter.teeth, feedPerToothMm)
  const cut = (one: PassPlan) => passOf(question, one, speed.rpm, feedPerToothMm), cuts = plan.map(cut), finish = cuts.at(-1)!
  const spring = question.springPass && finish.deflection.tipUm >= leastSpringUm ? cut({ kind: 'spring', widthMm: Math.min(cutter.diameterMm, finish.deflection.tipUm / 1000), direction: 'climb' }) : null
  const passes = spring === null ? cuts : [...cuts, spring], last = spring ?? finish
  const wall = { finishUm: finish.deflection.tipUm, springUm: spring?.deflection.tipUm ?? null, leftUm: last.deflection.tipUm, taperUm: last.deflection.taperUm }
  const limits = [...(byTableMm < question.feedPerToothMm ? ['feed-limited' as const] : []), ...(feedPerToothMm < byTableMm ? ['power-limited' as const] : [])]
  return {
    rpm: speed.rpm, speedMPerMin: speed.mPerMin, feedPerToothMm, feedMmPerMin, passes, wall, minutes: passes.reduce((sum, { minutes }) => sum + minutes, 0),
    forceN: Math.max(...passes.map(({ forceN }) => forceN)), motorKw: Math.max(...passes.map(({ motorKw }) => motorKw)),
    cautions: question.hardened ? ['sharp edges', 'hard milling'] : ['milling bars', 'sharp edges'],
    findings: [...speed.findings, ...limits.map((code): Finding => ({ code, facts: { feedPerToothMm, wantedMm: question.feedPerToothMm, mostKw: machine.powerKw, mostMmPerMin: machine.mostFeedMmPerMin } })), ...cuttingFindings(question, passes, wall, feedPerToothMm)],
  }
}

/** µm. Less to take is nothing to take. */
const leastSpringUm = 0.01

/** The most feed up to a given one that the motor has the power for in the widest pass; power rises with the feed. */
function withinPower(question: CuttingQuestion, rpm: number, widthMm: number, mostMm: number): number {
  const mostKw = question.machine.powerKw, kw = (feedMm: number) => passOf(question, { kind: 'rough', widthMm, direction: 'conventional' }, rpm, feedMm).motorKw
  if (mostKw === null || kw(mostMm) <= mostKw) return mostMm
  let [low, high] = [0, mostMm]
  for (;;) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) return low
    if (kw(middle) <= mostKw) low = middle
    else high = middle
  }
}
