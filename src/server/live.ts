/** Tells everybody who listens whenever the shop has changed. */
export type Live = {
  /** @returns leaves again */
  readonly join: (tell: (revision: string) => void) => () => void
  readonly count: () => number
}

/** How often it is looked at: a number out of memory, and only while somebody listens. Another program's writes are seen, too. */
const lookMs = 150

export function liveOf(revision: () => Promise<string>): Live {
  const listeners = new Set<(revision: string) => void>()
  let last = '', looking = false
  async function look(): Promise<void> {
    looking = true
    while (listeners.size > 0) {
      // A database that cannot be read just now is the business of whoever asks for the shop.
      const now = await revision().catch(() => last)
      if (now !== last) { last = now; for (const tell of listeners) tell(now) }
      await new Promise((done) => { setTimeout(done, lookMs).unref() })
    }
    looking = false
  }
  return {
    join(tell) {
      listeners.add(tell)
      if (last !== '') tell(last)
      if (!looking) void look()
      return () => { listeners.delete(tell) }
    },
    count: () => listeners.size,
  }
}
