import { Refusal } from '#model/refusal.ts'

/** What a calculation answers, or what it refuses. */
export type Asked<Answer> = { readonly answer: Answer } | { readonly refusal: Refusal }

/** Asks; a refusal is an answer of its own, anything else is a fault and goes on. */
export function asked<Answer>(ask: () => Answer): Asked<Answer> {
  try { return { answer: ask() } } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return { refusal: error }
  }
}
