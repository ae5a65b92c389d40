import type { Finding } from '#model/finding.ts'
import type { CutState } from '#engine/make/cut-list/cut.ts'

/** `optimal`: nothing less can do. `gap`: the time ran out before that was shown. `not-enough-stock`: no plan can be. */
export type CutStatus = 'optimal' | 'gap' | 'not-enough-stock'

export function cutStatusOf({ plan, bound }: CutState): CutStatus {
  if (plan !== null && plan.cost <= bound) return 'optimal'
  return plan === null && bound === Infinity ? 'not-enough-stock' : 'gap'
}

/** What the person should know of an answer that is not the best there is. */
export function cutFindings(status: CutStatus, found: number | null, bound: number | null): readonly Finding[] {
  if (status === 'optimal') return []
  if (status === 'not-enough-stock') return [{ code: 'not-enough-stock', facts: {} }]
  return [found === null ? { code: 'no-plan-found', facts: {} } : { code: 'plan-not-proved-least', facts: { found, bound } }]
}
