import { Refusal } from '#model/refusal.ts'

/** Levels of lists and records in one body; ours have some ten. Readers that call themselves run out of stack at thousands. */
const mostLevels = 64

/**
 * A body as data that can be read and kept as it was sent.
 *
 * @throws Refusal `not-json`; `too-deep`; `letter-cut` for half a character, such as `"\ud800"`, which no database keeps
 */
export function jsonBody(text: string): unknown {
  let level = [parsed(text)]
  const whole = level[0]
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > mostLevels) throw new Refusal('too-deep', { needed: mostLevels })
    level = level.flatMap(insideOf)
  }
  return whole
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw new Refusal('not-json')
  }
}

function insideOf(value: unknown): unknown[] {
  if (typeof value === 'string') mindLetters(value)
  if (typeof value !== 'object' || value === null) return []
  if (Array.isArray(value)) return value
  for (const key in value) mindLetters(key)
  return Object.values(value)
}

function mindLetters(text: string): void {
  if (/\p{Surrogate}/u.test(text)) throw new Refusal('letter-cut')
}
