import type { Store } from '#store/store.ts'

/** Tells everybody who listens whenever the shop has changed. */
export type Live = {
  /** @returns leaves again */
  readonly join: (tell: (revision: string) => void) => () => void
  readonly count: () => number
}

/** How often it is looked at while somebody listens: a number out of memory, and another program's writes are seen, too. */
const lookMs = 250
/** The same where writes are told of: should one ever not be. */
const lookAnywayMs = 5000

/** @param hear  wakes after each write; null: nothing does */
export function liveOf(revision: () => Promise<string>, hear: Store['hear'] = null): Live {
  const listeners = new Set<(revision: string) => void>()
  let last = '', looking = false, woken = false, wake = () => {}
  async function look(): Promise<void> {
    looking = true
    const leave = hear?.(() => { woken = true; wake() })
    while (listeners.size > 0) {
      woken = false
      // A database that cannot be read just now is the business of whoever asks for the shop.
      const now = await revision().catch(() => last)
      if (now !== last) { last = now; for (const tell of listeners) tell(now) }
      if (!woken) await new Promise<void>((done) => { const pause = setTimeout(done, hear ? lookAnywayMs : lookMs).unref(); wake = () => { clearTimeout(pause); done() } })
    }
    leave?.()
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
