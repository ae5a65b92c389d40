import { useSyncExternalStore } from 'react'
import type { Standing } from '#model/access.ts'
import { ask } from '#web/api.ts'

/** How this device stands to the shop; null until it was heard, and while the shop does not answer as it last was. */
let standing: Standing | null = null
const listeners = new Set<() => void>()

export function useStanding(): Standing | null {
  return useSyncExternalStore((tell) => { listeners.add(tell); return () => listeners.delete(tell) }, () => standing)
}

/** Asks again: when the app opens, comes back into view, and after whatever changes it. A shop that is away changes nothing. */
export async function refreshStanding(): Promise<void> {
  const heard = await ask<Standing>('/api/access').catch(() => null)
  if (heard === null) return
  standing = heard
  for (const tell of listeners) tell()
}

export function watchStanding(): void {
  void refreshStanding()
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') void refreshStanding() })
}

/** Plain http from another machine: the browser keeps no app, gives no serial line and no certainty who answers. */
export const isPlainHttp = !isSecureContext
