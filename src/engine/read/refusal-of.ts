import { Refusal } from '#model/refusal.ts'

/** For tests: what a calculation refuses about a case, as `code field`; `answered` where it refuses nothing. */
export function refusalOf(answer: (raw: unknown) => unknown, raw: unknown): string {
  try {
    answer(raw)
    return 'answered'
  } catch (error) {
    if (error instanceof Refusal && typeof error.facts.field === 'string') return `${error.code} ${error.facts.field}`
    throw error
  }
}
