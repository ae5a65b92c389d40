import { useSyncExternalStore } from 'react'

let take: (() => void) | null = null
const listeners = new Set<() => void>()

/** Keeps the app on the device. Only https (or the machine itself) allows it; elsewhere the app still works while the server answers. */
export async function keepApp(): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  const registration = await navigator.serviceWorker.register('/sw.js', { updateViaCache: 'none' })
  if (registration.waiting) offer(registration.waiting)
  registration.addEventListener('updatefound', () => {
    const worker = registration.installing
    worker?.addEventListener('statechange', () => { if (worker.state === 'installed' && navigator.serviceWorker.controller) offer(worker) })
  })
}

/** Changes over to a new version that is ready; null while there is none. */
export function useNewVersion(): (() => void) | null {
  return useSyncExternalStore((tell) => { listeners.add(tell); return () => listeners.delete(tell) }, () => take)
}

function offer(worker: ServiceWorker): void {
  take = () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
    worker.postMessage('skipWaiting')
  }
  for (const tell of listeners) tell()
}
