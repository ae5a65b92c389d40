import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible'
import { Refusal } from '#model/refusal.ts'

/** How often something may be tried, kept in memory: `take` counts one try of whoever `who` is. */
export type Limit = { readonly take: (who: string) => Promise<void> }

export type Limits = {
  /** Codes of new devices, by address; and by all together, for one who has many addresses. */
  readonly enrolling: Limit
  readonly enrollingAll: Limit
  readonly passphrase: Limit
  readonly passphraseAll: Limit
  /** Of one device: more than a day's outbox, which then goes within a minute. */
  readonly writes: Limit
}

/** Tries in a minute. A code has 40 bits and lives ten minutes: 600 tries find it once in two thousand million times. */
export function usualLimits(): Limits {
  return { enrolling: aMinute(10), enrollingAll: aMinute(60), passphrase: aMinute(5), passphraseAll: aMinute(30), writes: aMinute(6000) }
}

/** `take` refuses with `too-many-tries` once `most` were taken within the minute. */
export function aMinute(most: number): Limit {
  const limiter = new RateLimiterMemory({ points: most, duration: 60 })
  return { async take(who) {
    try {
      await limiter.consume(who)
    } catch (error) {
      if (!(error instanceof RateLimiterRes)) throw error
      throw new Refusal('too-many-tries', { waitS: Math.max(1, Math.ceil(error.msBeforeNext / 1000)) })
    }
  } }
}
