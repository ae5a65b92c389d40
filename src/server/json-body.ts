import { Refusal } from '#model/refusal.ts'

/** Levels of lists and records in one body; ours have some ten. Readers that call themselves run out of stack at thousands. */
const mostLevels = 64

/**
 * A body as data that can be read and kept as it was sent.
 *
 * @throws Refusal `not-json` (nor is what is not UTF-8); `too-deep`; `letter-cut` for half a character, such as `"\ud800"`, which no database keeps
 */
export function jsonBody(bytes: ArrayBuffer): unknown {
  let level = [parsed(bytes)]
  const whole = level[0]
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > mostLevels) throw new Refusal('too-deep', { needed: mostLevels })
    level = level.flatMap(insideOf)
  }
  return whole
}

const utf8 = new TextDecoder('utf-8', { fatal: true })

function parsed(bytes: ArrayBuffer): unknown {
  try {
    return JSON.parse(utf8.decode(bytes))
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
