import { Refusal } from '#model/refusal.ts'

/** Levels of lists and records in one body; ours have some ten. Readers that call themselves run out of stack at thousands. */
const mostLevels = 64

/**
 * A body as data that can be read and kept as it was sent.
 *
 * @throws Refusal `not-json` (nor is what is not UTF-8); `too-deep`; `letter-cut` for half a character, such as `"\ud800"`, which no database keeps
 */
export function jsonBody(bytes: ArrayBuffer): unknown {
  const { whole, text } = parsed(bytes), mayBeCut = halfLetter.test(text)
  let level = [whole]
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > mostLevels) throw new Refusal('too-deep', { needed: mostLevels })
    if (mayBeCut) level.forEach(mindLettersOf)
    level = level.filter((value) => typeof value === 'object' && value !== null).flatMap((value) => (Array.isArray(value) ? value : Object.values(value as object)))
  }
  return whole
}

const utf8 = new TextDecoder('utf-8', { fatal: true })
/** In UTF-8 half a character can only be written out by its number. */
const halfLetter = /\\u[dD][89a-fA-F]/

function parsed(bytes: ArrayBuffer): { readonly whole: unknown; readonly text: string } {
  try {
    const text = utf8.decode(bytes)
    return { whole: JSON.parse(text), text }
  } catch {
    throw new Refusal('not-json')
  }
}

function mindLettersOf(value: unknown): void {
  if (typeof value === 'string') mindLetters(value)
  else if (typeof value === 'object' && value !== null && !Array.isArray(value)) Object.keys(value).forEach(mindLetters)
}

function mindLetters(text: string): void {
  if (/\p{Surrogate}/u.test(text)) throw new Refusal('letter-cut')
}
