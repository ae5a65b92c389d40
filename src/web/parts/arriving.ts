import { lazy, type LazyExoticComponent, type ReactNode } from 'react'

type Part<Props> = (props: Props) => ReactNode

const pauseMs = 1000

/**
 * A part of the app that is fetched when it is first opened. Where the server is away it is asked for until it comes: what
 * waits for it opens by itself, and the rest of the app goes on.
 */
export function arriving<Props>(load: () => Promise<Part<Props>>): LazyExoticComponent<Part<Props>> {
  return lazy(async () => ({ default: await untilItCame(load) }))
}

async function untilItCame<What>(load: () => Promise<What>): Promise<What> {
  let last: unknown
  for (;;) {
    try { return await load() } catch (error) {
      // What came and failed by itself fails again with the very same error; what did not come, with a new one.
      if (error === last) throw error
      last = error
    }
    await new Promise((done) => { setTimeout(done, pauseMs) })
  }
}
