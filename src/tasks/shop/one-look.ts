import { setImmediate } from 'node:timers/promises'

/**
 * One look for all who ask before it begins, and never two at once: whoever asks is told what was there when they asked, or
 * newer, however many they are.
 */
export function oneLook<Seen>(look: () => Promise<Seen>): () => Promise<Seen> {
  let next: Promise<Seen> | null = null, last: Promise<unknown> = Promise.resolve()
  return () => {
    if (next !== null) return next
    // Whoever else has come in by then is told along.
    const seen = last.then(() => setImmediate()).then(() => { next = null; return look() })
    next = seen
    last = seen.catch(() => undefined)
    return seen
  }
}
