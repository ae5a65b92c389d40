import type { Finding } from '#model/finding.ts'
import type { Situation } from '#model/situation.ts'
import { cuttingFindings } from '#engine/make/cutting/cutting-findings.ts'
import { type PassPlan, passWidths, springPass } from '#engine/make/cutting/passes.ts'
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
  const byTableMm = Math.min(question.feedPerToothMm, (machine.mostFeedMmPerMin ?? Infinity) / (speed.rpm * cutter.teeth))
  const feedPerToothMm = withinPower(question, speed.rpm, byTableMm)
  const passes = passesAt(question, speed.rpm, feedPerToothMm), wall = wallAfter(passes)
  const limits = [...(byTableMm < question.feedPerToothMm ? ['feed-limited'] : []), ...(feedPerToothMm < byTableMm ? ['power-limited'] : [])]
  const limitFacts = { feedPerToothMm, wantedMm: question.feedPerToothMm, mostKw: machine.powerKw, mostMmPerMin: machine.mostFeedMmPerMin }
  return {
    rpm: speed.rpm, speedMPerMin: speed.mPerMin, feedPerToothMm, feedMmPerMin: feedRate(speed.rpm, cutter.teeth, feedPerToothMm), passes, wall, minutes: passes.reduce((sum, { minutes }) => sum + minutes, 0),
    forceN: Math.max(...passes.map(({ forceN }) => forceN)), motorKw: mostKwOf(passes),
    cautions: question.hardened ? ['sharp edges', 'hard milling'] : ['milling bars', 'sharp edges'],
    findings: [...speed.findings, ...limits.map((code): Finding => ({ code, facts: limitFacts })), ...cuttingFindings(question, passes, wall, feedPerToothMm)],
  }
}

/** µm. Less to take is nothing to take. */
const leastSpringUm = 0.01

/** One after the other: what bending leaves, the next one faces. */
function passesAt(question: CuttingQuestion, rpm: number, feedPerToothMm: number): readonly Pass[] {
  const passes: Pass[] = [], leftUm = () => passes.at(-1)?.deflection.tipUm ?? 0, cut = (one: PassPlan) => { passes.push(passOf(question, one, leftUm() / 1000, rpm, feedPerToothMm)) }
  passWidths(question.stockMm, question.roughMm, question.finishMm).forEach(cut)
  if (question.springPass && leftUm() >= leastSpringUm) cut(springPass)
  return passes
}

function wallAfter(passes: readonly Pass[]): Wall {
  const finishUm = passes.find(({ kind }) => kind === 'finish')!.deflection.tipUm, last = passes.at(-1)!, { tipUm, taperUm } = last.deflection
  return { finishUm, springUm: last.kind === 'spring' ? tipUm : null, leftUm: tipUm, taperUm }
}

const mostKwOf = (passes: readonly Pass[]): number => Math.max(...passes.map(({ motorKw }) => motorKw))

/** The most feed up to a given one that the motor has the power for; power rises with the feed. */
function withinPower(question: CuttingQuestion, rpm: number, mostMm: number): number {
  const mostKw = question.machine.powerKw, isWithin = (feedMm: number) => mostKwOf(passesAt(question, rpm, feedMm)) <= mostKw!
  if (mostKw === null || isWithin(mostMm)) return mostMm
  let [low, high] = [0, mostMm]
  for (;;) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) return low
    if (isWithin(middle)) low = middle
    else high = middle
  }
}
