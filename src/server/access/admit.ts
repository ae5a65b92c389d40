import type { Context, MiddlewareHandler } from 'hono'
import type { EnrolledDevice } from '#model/access.ts'
import { Refusal } from '#model/refusal.ts'
import { bringsDevice, bringsOwner } from '#server/access/cookies.ts'
import type { Limits } from '#server/access/limits.ts'
import { isPassedOn, type Origin, originOf } from '#server/access/origin-of.ts'
import type { Reach } from '#server/access/reach.ts'
import type { Unlocked } from '#server/access/unlocked.ts'
import type { Store } from '#store/store.ts'
import { deviceBringing } from '#tasks/access/devices.ts'
import { ownerIsSet } from '#tasks/access/owner.ts'

/** Who asks. */
export type Caller = Origin & {
  readonly device: EnrolledDevice | null
  /** Whether owner actions are let through. */
  readonly isOwner: () => Promise<boolean>
}

declare module 'hono' {
  interface ContextVariableMap { readonly caller: Caller }
}

export type Access = { readonly store: Store; readonly reach: Reach; readonly limits: Limits; readonly unlocked: Unlocked }

/** What a device may ask before it is enrolled: whether the server answers, how it stands, and to be let in. */
export const openDoors: readonly string[] = ['GET /api/health', 'GET /api/access', 'POST /api/enrol']

/**
 * Before every door of the interface, those that are still to be built too: whoever is not on this machine and brings no
 * token of an enrolled device is refused. A revoked device is refused from its next request on.
 */
export function admit(access: Access): MiddlewareHandler {
  const { reach, limits } = access
  return async (c, next) => {
    if (!reach.behindProxy && isPassedOn(c)) return c.json({ refused: 'forwarded-unexpected', facts: {} }, 403)
    const caller = await callerOf(c, access), isRead = c.req.method === 'GET' || c.req.method === 'HEAD'
    c.set('caller', caller)
    if (!caller.here && caller.device === null && !openDoors.includes(`${isRead ? 'GET' : c.req.method} ${c.req.path}`)) return c.json({ refused: 'device-not-enrolled', facts: {} }, 401)
    if (!isRead && caller.device !== null) await limits.writes.take(caller.device.id)
    return await next()
  }
}

/** @throws Refusal `owner-needed` */
export async function mindOwner(c: Context): Promise<void> {
  if (!await c.get('caller').isOwner()) throw new Refusal('owner-needed')
}

/** For this machine itself, and the owner. @throws Refusal `owner-needed` */
export async function mindHere(c: Context): Promise<void> {
  if (!c.get('caller').here) await mindOwner(c)
}

/** Whether who asked is still let in: for what goes on long after it was asked. */
export async function isStillIn(c: Context, { store }: Access): Promise<boolean> {
  const { here, https } = c.get('caller')
  return here || await deviceBringing(store, bringsDevice(c, https)) !== null
}

/** Under what name an unlocking stands: the device, or this machine. */
export const unlockedName = ({ device }: Pick<Caller, 'device'>): string => device?.id ?? 'here'

async function callerOf(c: Context, { store, reach, unlocked }: Access): Promise<Caller> {
  const origin = originOf(c, reach)
  const device = origin.here ? null : await deviceBringing(store, bringsDevice(c, origin.https))
  return { ...origin, device, isOwner: async () => await unlocked.isOpen(bringsOwner(c, origin.https), unlockedName({ device })) || (origin.here && !await ownerIsSet(store)) }
}
