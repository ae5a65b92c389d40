import { Refusal, type Fact } from '#model/refusal.ts'

/** What is wrong with the form of a case, before anything in it is understood. The first of these that applies anywhere is named. */
export const malformedCodes = ['field-missing', 'not-a-number', 'unknown-word', 'too-large', 'too-many'] as const
export type MalformedCode = (typeof malformedCodes)[number]

/**
 * Notes taken while a case is read: what is wrong with it, and which keys nobody knows.
 *
 * All of a case is read before anything is refused, because the code named is the first of the order, not of the case.
 */
export class Complaints {
  readonly ignored: string[] = []
  readonly #first = new Map<MalformedCode, { field: string; given: Fact; needed: Fact }>()

  add(code: MalformedCode, field: string, given: unknown, needed: Fact): void {
    if (!this.#first.has(code)) this.#first.set(code, { field, given: plain(given), needed })
  }

  /** @throws Refusal with the first code of the order that was noted, about the first field it was noted for */
  refuseAny(): void {
    for (const code of malformedCodes) {
      const facts = this.#first.get(code)
      if (facts) throw new Refusal(code, facts)
    }
  }
}

/** What was given, short and plain enough to be shown. */
function plain(given: unknown): Fact {
  if (given === undefined || given === null) return null
  if (typeof given === 'string') return given.length > 80 ? `${given.slice(0, 80)}…` : given
  if (typeof given === 'boolean') return given
  if (typeof given === 'number') return Number.isFinite(given) ? given : String(given)
  return Array.isArray(given) ? 'a list' : typeof given === 'object' ? 'an object' : typeof given
}
