import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { Fault, Unable } from '#web/api.ts'

/** Why an answer did not come, for what is asked of the server at once and not through the outbox. */
export function sayTrouble(error: unknown, units: Units): string {
  if (error instanceof Refusal) return sayRefusal(error, units)
  if (error instanceof Unable) return sayRefusal(error.refusal, units)
  if (error instanceof Fault) return `The shop’s server failed; ${error.id} finds the reason in its log.`
  return 'The shop’s server does not answer. Try again when it does.'
}
