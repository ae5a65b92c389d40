import { useSyncExternalStore } from 'react'

export const places = ['setup', 'inspect', 'rack', 'make', 'shop'] as const
export type Place = (typeof places)[number]

/** Where the person is: the place, and the steps of the address behind it. `place` null: an address we do not have. */
export type Route = { readonly place: Place | null; readonly rest: readonly string[] }

/** `/` is the setup: the first screen; `/c/` and the code on a label leads to the rack. A broken escape in an address is kept as it stands. */
export function routeFrom(path: string): Route {
  const [first, ...rest] = path.split('/').filter((step) => step !== '').map(unescaped)
  if (first === undefined) return { place: 'setup', rest: [] }
  if (first === 'c') return { place: 'rack', rest: ['code', ...rest] }
  const place = places.find((known) => known === first) ?? null
  return { place, rest: place === null ? [] : rest }
}

/** Goes to an address of ours, without loading the page anew. */
export function go(path: string, how: { readonly replace?: boolean } = {}): void {
  if (path === location.pathname) return
  history[how.replace ? 'replaceState' : 'pushState'](null, '', path)
  if (!how.replace) scrollTo({ top: 0, behavior: 'instant' })
  dispatchEvent(new Event('went'))
}

export function useRoute(): Route {
  return routeFrom(useSyncExternalStore(onWent, () => location.pathname))
}

function onWent(tell: () => void): () => void {
  addEventListener('popstate', tell)
  addEventListener('went', tell)
  return () => { removeEventListener('popstate', tell); removeEventListener('went', tell) }
}

function unescaped(step: string): string {
  try { return decodeURIComponent(step) } catch { return step }
}
