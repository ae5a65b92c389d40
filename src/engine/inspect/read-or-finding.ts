import { attempt } from '#model/attempt.ts'
import type { Finding } from '#model/finding.ts'
import { Refusal } from '#model/refusal.ts'

/** What reading gave, or what it was refused with, as data. */
export function readOrFinding<Value>(read: () => Value): readonly [Value, null] | readonly [null, Finding] {
  const got = attempt(read)
  return got instanceof Refusal ? [null, { code: got.code, facts: got.facts }] : [got, null]
}
