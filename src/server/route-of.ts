import type { Context } from 'hono'
import { matchedRoutes } from 'hono/route'

/** The shape of the address, never the address: what is asked for is nobody else's business. `other` for what no door is for. */
export function routeOf(c: Context): string {
  return matchedRoutes(c).findLast(({ method }) => method !== 'ALL')?.path ?? 'other'
}
