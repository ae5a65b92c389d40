import { windowOf } from '#engine/setup/window.ts'
import type { Finding } from '#model/finding.ts'
import type { Rejection, SetupQuestion, Window } from '#model/setup.ts'
import type { Vise } from '#model/vise.ts'

/** Jaws of this vise that have a step, with the vise as it would be with them. */
export type StepJaws = { readonly name: string; readonly stepMm: number; readonly vise: Vise }

/**
 * What else would do when nothing in the rack serves as it stands: adjustable parallels set by micrometer, the next lower
 * pair on a strip along its whole length (for drilling and milling only), a step of the vise's own jaws.
 *
 * All the ways bars of the rack can stand have been tried before this. Common practice, no source.
 *
 * @param nearMisses  candidates that do not serve, among them the nearest pairs on edge
 * @source SETUP-RULES
 */
export function otherWaysOf(question: SetupQuestion, window: Window, nearMisses: readonly Rejection[], stepJaws: readonly StepJaws[]): readonly Finding[] {
  const { lowMm, highMm } = window, isOpen = window.giveUp === null, round = question.part.shape === 'round'
  const below = nearMisses.filter(({ stand, reasons }) => stand === 'on edge' && reasons.length === 1 && reasons[0] === 'too-low')
  const next = below.reduce<Rejection | null>((best, one) => (best === null || one.seatMm > best.seatMm ? one : best), null)
  const coarse = question.wishes.use === 'drilling' || question.wishes.use === 'milling'
  return [
    ...(isOpen && !round ? [{ code: 'adjustable-parallels', facts: { lowMm, highMm } }] : []),
    ...(isOpen && next !== null && coarse ? [{ code: 'pair-on-strips', facts: { bars: [...next.bars], fromMm: lowMm - next.seatMm, toMm: highMm - next.seatMm } }] : []),
    ...stepJaws.filter((jaws) => carries(question, jaws)).map(({ name, stepMm }) => ({ code: 'step-jaws', facts: { jaws: name, stepMm } })),
  ]
}

/** A step serves as a seat does; nothing may come out below over it. */
function carries(question: SetupQuestion, { vise, stepMm }: StepJaws): boolean {
  const { lowMm, highMm, lowBecause } = windowOf({ ...question, vise })
  return question.part.shape === 'block' && lowBecause !== 'drill-tip' && lowBecause !== 'through-cut' && stepMm >= lowMm && stepMm <= highMm
}
