import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'

/** What reading gave, or what it was refused with, as data: for a hand that is still typing. */
export function attempt<Value>(read: () => Value): readonly [Value, null] | readonly [null, Finding] {
  try {
    return [read(), null]
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return [null, { code: error.code, facts: error.facts }]
  }
}
