import { z } from '@hono/zod-openapi'
import type { Context } from 'hono'
import { deviceNameSchema, standingSchema } from '#model/access.ts'
import { idSchema } from '#model/change.ts'
import { Refusal } from '#model/refusal.ts'
import { type Access, mindOwner, unlockedName } from '#server/access/admit.ts'
import { bringsDevice, giveDevice, giveOwner } from '#server/access/cookies.ts'
import { type Doors, openRoute } from '#server/open-route.ts'
import type { KeptPassphrase } from '#store/access.ts'
import { dismissDevice, enrolDevice, inviteDevice, listDevices, renameDevice } from '#tasks/access/devices.ts'
import { ownerIsSet, provePassphrase, setPassphrase } from '#tasks/access/owner.ts'
import { makerFor } from '#tasks/maker.ts'

const deviceSchema = z.object({ id: idSchema, name: z.string(), atIso: z.string(), revokedAtIso: z.string().nullable() })
const trustSchema = z.object({ addresses: z.array(z.string()), fingerprint: z.string() })
const passphraseSchema = z.strictObject({ passphrase: z.string().max(1000) })
const done = z.object({ done: z.literal(true) })

/** Who may talk to the shop: devices, and the owner. */
export function addAccessRoutes(doors: Doors, access: Access): void {
  addDeviceRoutes(doors, access)
  addOwnerRoutes(doors, access)
  openRoute(doors, { method: 'get', path: '/api/access', summary: 'How this device stands to the shop. Open to all.', answer: standingSchema }, async (c) => {
    const { here, https, device, isOwner } = c.get('caller')
    if (device !== null) giveDevice(c, bringsDevice(c, https), https)
    const set = await ownerIsSet(access.store)
    const known = here || device !== null
    return c.json({ here, network: access.reach.network, secure: https || here, device: device && { id: device.id, name: device.name }, owner: { set: known && set, unlocked: known && await isOwner() } })
  })
}

function addDeviceRoutes(doors: Doors, { store, reach, limits }: Access): void {
  openRoute(doors, {
    method: 'post', path: '/api/enrol', body: z.strictObject({ code: z.string().max(40), name: deviceNameSchema, device: idSchema.optional() }), answer: deviceSchema,
    summary: 'Let this device in by a one-time code; the answer sets its cookie. Open to all.',
  }, async (c, { code, name, device: own }) => {
    const { address, https } = c.get('caller')
    await limits.enrolling.take(address)
    await limits.enrollingAll.take('all')
    const { device, token } = await enrolDevice(store, { code, name }, makerFor('', own ?? 'server'))
    giveDevice(c, token, https)
    return c.json(device)
  })
  openRoute(doors, {
    method: 'get', path: '/api/devices', answer: z.object({ devices: z.array(deviceSchema), addresses: z.array(z.string()), trust: trustSchema.nullable() }),
    summary: 'All devices ever let in; where the shop is found in its network, and where a device is made to trust it.',
  }, async (c) => {
    const authority = reach.authority(), addresses = reach.addresses()
    return c.json({ devices: await listDevices(store), addresses, trust: authority && { addresses: addresses.map((one) => `${one.replace(/^https:/, 'http:')}/trust`), fingerprint: authority.fingerprint } })
  })
  openRoute(doors, { method: 'post', path: '/api/devices/code', owner: true, summary: 'A code that lets one device in, within ten minutes. For the owner.', answer: z.object({ code: z.string(), untilIso: z.string() }) },
    async (c) => c.json(await inviteDevice(store, makerFor('', unlockedName(c.get('caller'))))))
  openRoute(doors, { method: 'post', path: '/api/devices/{id}/name', owner: true, summary: 'Call a device something else. For the owner.', body: z.strictObject({ name: deviceNameSchema }), answer: done }, async (c, { name }) => {
    await renameDevice(store, c.req.param('id')!, name)
    return c.json({ done: true })
  })
  openRoute(doors, { method: 'post', path: '/api/devices/{id}/revoke', owner: true, summary: 'Refuse a device from its next request on. For the owner.', answer: deviceSchema },
    async (c) => c.json(await dismissDevice(store, c.req.param('id')!, makerFor('', unlockedName(c.get('caller'))))))
}

function addOwnerRoutes(doors: Doors, { store, limits, unlocked }: Access): void {
  const counted = async (c: Context) => {
    await limits.passphrase.take(c.get('caller').address)
    await limits.passphraseAll.take('all')
  }
  const unlock = (c: Context, proved: KeptPassphrase) => giveOwner(c, unlocked.open(unlockedName(c.get('caller')), proved), c.get('caller').https)
  openRoute(doors, { method: 'post', path: '/api/owner/unlock', summary: 'Give the owner\'s passphrase: for ten minutes owner actions are let through on this device.', body: passphraseSchema, answer: done }, async (c, { passphrase }) => {
    await counted(c)
    unlock(c, await provePassphrase(store, passphrase))
    return c.json({ done: true })
  })
  openRoute(doors, { method: 'post', path: '/api/owner/lock', summary: 'Ask for the passphrase again from now on.', answer: done }, async (c) => {
    giveOwner(c, '', c.get('caller').https)
    return c.json({ done: true })
  })
  openRoute(doors, { method: 'post', path: '/api/owner/passphrase', summary: 'Set the owner\'s passphrase: the first on the machine itself, a later one by the owner.', body: passphraseSchema, answer: done }, async (c, { passphrase }) => {
    await counted(c)
    if (await ownerIsSet(store)) await mindOwner(c)
    else if (!c.get('caller').here) throw new Refusal('machine-only')
    unlock(c, await setPassphrase(store, passphrase, makerFor('', unlockedName(c.get('caller')))))
    return c.json({ done: true })
  })
}
