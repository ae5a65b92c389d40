import { Refusal } from '#model/refusal.ts'

/** The value, or the refusal in its place: for a hand that is still typing, and for lists of which one entry is amiss. A fault goes on. */
export function attempt<Value>(run: () => Value): Value | Refusal {
  try { return run() } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
}

/** The value, or what stands in for it where it is refused. */
export function attemptOr<Value, Other>(run: () => Value, other: Other): Value | Other {
  const got = attempt(run)
  return got instanceof Refusal ? other : got
}
