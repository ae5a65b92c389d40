import { stepJawsOf } from '#engine/rack/step-jaws.ts'
import { otherWaysOf } from '#engine/setup/other-ways.ts'
import { situationsOf } from '#engine/setup/situations.ts'
import { whyNot } from '#engine/setup/why-not.ts'
import type { Finding } from '#model/finding.ts'
import type { Choice, Rejection, RejectionReason } from '#model/setup.ts'
import type { Situation } from '#model/situation.ts'
import type { SetupAtVise } from '#tasks/setup/choose-for-vise.ts'

/** A candidate that does not serve, and each of its reasons with its figures. */
export type NearMiss = { readonly rejection: Rejection; readonly why: readonly Finding[] }

/** Two seats nearer than this are one height on the shelf. */
const sameHeightMm = 0.05

/**
 * What stands just outside the heights that work: of those that only stand too high or too low the nearest on either side,
 * each height once. Where nothing serves also what fails for other reasons, the fewest first.
 */
export function nearMisses({ question, answer, bars }: SetupAtVise, most: number): readonly NearMiss[] {
  const sized = new Map(bars.map((bar) => [bar.id, bar]))
  const side = (reason: RejectionReason) => eachHeightOnce(answer.rejected.filter(({ reasons }) => reasons.length === 1 && reasons[0] === reason)).slice(0, Math.ceil(most / 2))
  const byHeight = [...side('too-high'), ...side('too-low')]
  const others = answer.choices.length > 0 ? [] : answer.rejected.filter((rejection) => !byHeight.includes(rejection))
  return [...byHeight, ...others].slice(0, most)
    .map((rejection) => ({ rejection, why: whyNot(rejection, { question, window: answer.window, bars: sized }) }))
}

function eachHeightOnce(rejections: readonly Rejection[]): readonly Rejection[] {
  const kept: Rejection[] = []
  for (const rejection of rejections) if (kept.every(({ seatMm }) => Math.abs(seatMm - rejection.seatMm) > sameHeightMm)) kept.push(rejection)
  return kept
}

/** What else would do where nothing in the rack serves, or where the first choice is kept off a jaw. */
export function otherWaysAt({ vise, question, answer, aroundHoles }: SetupAtVise): readonly Finding[] {
  return answer.choices.length > 0 ? aroundHoles : [...aroundHoles, ...otherWaysOf(question, answer.window, answer.rejected, vise === null ? [] : stepJawsOf(vise))]
}

/** What the choice and its cuts call to be careful about. */
export function situationsAt({ question: { part, cuts } }: SetupAtVise, choice: Choice): ReadonlySet<Situation> {
  return situationsOf(choice, part, cuts)
}
