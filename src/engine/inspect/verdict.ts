import { Refusal } from '#model/refusal.ts'
import { normalBelow } from '#engine/numeric/normal.ts'

export const decisionRules = ['guard-band', 'simple'] as const
/** Keep a guard band inside the limit for the uncertainty, or take the value as it is. */
export type DecisionRule = (typeof decisionRules)[number]

/** A value with its standard uncertainty against a lower limit, an upper limit, or both; null where there is none. */
export type VerdictQuestion = {
  readonly valueUm: number
  readonly uUm: number
  readonly lowerUm: number | null
  readonly upperUm: number | null
  readonly rule: DecisionRule
  readonly guardFactor: number
  /** Of a parallelism or a difference of mates: below 0 there is nothing, which bears on `provable` alone. */
  readonly cannotBeNegative: boolean
}

export type Verdict = 'proved' | 'not-proved' | 'out'

export type VerdictAnswer = {
  readonly verdict: Verdict
  /** Chance that the true value keeps the limits, for a normal error and no knowledge beforehand. */
  readonly pConform: number
  readonly guardUm: number
  /** Values from here to there are proved; null where there is no limit. */
  readonly acceptFromUm: number | null
  readonly acceptToUm: number | null
  /** Whether any value at all could be proved with this uncertainty. */
  readonly provable: boolean
  /** The smallest limit that this value would be proved to keep. */
  readonly provedToUm: number
}

/** One-sided guard for 95 % conformity, in standard uncertainties. @source ISO-14253-1 */
export const commonGuardFactor = 1.65

/** µm. Values nearer to a limit than this are equal to it: the rounding of sums and differences. */
const equalUm = 1e-9

/**
 * What a measured value proves.
 *
 * @throws Refusal `no-limit`, `limits-crossed`, `uncertainty-negative`, in this order
 * @source JCGM-106 (7.3, 7.4, 8.3.2) · ISO-14253-1
 */
export function verdictOf(question: VerdictQuestion): VerdictAnswer {
  const { valueUm, uUm, lowerUm, upperUm, cannotBeNegative } = question
  refuseUnfit(question)
  const guardUm = question.rule === 'simple' ? 0 : question.guardFactor * uUm
  const acceptFromUm = lowerUm === null ? null : lowerUm + guardUm, acceptToUm = upperUm === null ? null : upperUm - guardUm
  const inside = valueUm >= (acceptFromUm ?? -Infinity) - equalUm && valueUm <= (acceptToUm ?? Infinity) + equalUm
  const outside = valueUm > (upperUm ?? Infinity) + guardUm + equalUm || valueUm < (lowerUm ?? -Infinity) - guardUm - equalUm
  const lowestUm = acceptFromUm ?? (cannotBeNegative ? 0 : -Infinity)
  return {
    verdict: inside ? 'proved' : outside ? 'out' : 'not-proved',
    pConform: shareBelow(upperUm ?? Infinity, valueUm, uUm, true) - shareBelow(lowerUm ?? -Infinity, valueUm, uUm, false),
    guardUm, acceptFromUm, acceptToUm,
    provable: (acceptToUm ?? Infinity) >= lowestUm - equalUm,
    provedToUm: Math.abs(valueUm) + commonGuardFactor * uUm,
  }
}

function refuseUnfit({ lowerUm, upperUm, uUm, guardFactor }: VerdictQuestion): void {
  if (lowerUm === null && upperUm === null) throw new Refusal('no-limit', { field: 'upperUm', given: null, needed: ['lowerUm', 'upperUm'] })
  if (lowerUm !== null && upperUm !== null && lowerUm > upperUm) throw new Refusal('limits-crossed', { field: 'lowerUm', given: lowerUm, needed: { most: upperUm } })
  if (uUm < 0) throw new Refusal('uncertainty-negative', { field: 'uUm', given: uUm, needed: { least: 0 } })
  if (guardFactor < 0) throw new Refusal('uncertainty-negative', { field: 'guardFactor', given: guardFactor, needed: { least: 0 } })
}

/** Share of the values that might have been meant and lie below a limit; without uncertainty all or none, `whenEqual` on the limit. */
function shareBelow(limitUm: number, valueUm: number, uUm: number, whenEqual: boolean): number {
  if (uUm > 0) return normalBelow((limitUm - valueUm) / uUm)
  return Math.abs(limitUm - valueUm) <= equalUm ? Number(whenEqual) : Number(limitUm > valueUm)
}
