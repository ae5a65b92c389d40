import { type Use, uses } from '#model/wishes.ts'
import { commonGuardFactor, type VerdictAnswer, verdictOf } from '#engine/inspect/verdict.ts'

/** µm. The largest parallelism, or difference of mates, for each use; a use left out is not judged. */
export type UseLimits = { readonly [use in Use]?: number }

export type UseVerdict = Pick<VerdictAnswer, 'verdict' | 'pConform' | 'provable'> & {
  readonly use: Use
  readonly limitUm: number
  /** With at most this standard uncertainty the value would be proved; null where it is above the limit. */
  readonly neededUUm: number | null
}

/** What a parallelism or a difference of mates is good for, coarsest use first. @source ISO-14253-1 */
export function usesProved(valueUm: number, uUm: number, limitsUm: UseLimits): readonly UseVerdict[] {
  return uses.flatMap((use) => {
    const limitUm = limitsUm[use]
    if (limitUm === undefined) return []
    const { verdict, pConform, provable } = verdictOf({ valueUm, uUm, lowerUm: null, upperUm: limitUm, rule: 'guard-band', guardFactor: commonGuardFactor, cannotBeNegative: true })
    return [{ use, limitUm, verdict, pConform, provable, neededUUm: valueUm > limitUm ? null : (limitUm - valueUm) / commonGuardFactor }]
  })
}
