import { createHash, randomBytes } from 'node:crypto'
import { deviceNameSchema, type EnrolledDevice } from '#model/access.ts'
import type { By } from '#model/change.ts'
import { codeFrom } from '#model/code.ts'
import { readAs } from '#model/read-as.ts'
import { Refusal } from '#model/refusal.ts'
import { addInvite, devicesOf, deviceWith, enrol, nameDevice, revokeDevice } from '#store/access.ts'
import type { Store } from '#store/store.ts'

/** How long a code lets a device in. Eight letters of 32 are 40 bits; with a few tries a minute nobody guesses one in that time. */
const codeMinutes = 10

/** A code to type on the new device, or to scan. */
export type Invitation = { readonly code: string; readonly untilIso: string }

export async function inviteDevice(store: Store, by: By): Promise<Invitation> {
  const code = codeFrom(randomBytes(8)), untilIso = new Date(Date.parse(by.atIso) + codeMinutes * 60_000).toISOString()
  await addInvite(store, hashOf(code), untilIso, by)
  return { code, untilIso }
}

/**
 * Lets a device in by its code. The token is told this once; the shop keeps its hash alone.
 *
 * @param code  as typed: small letters, blanks and hyphens do not matter
 * @throws Refusal `enrol-code-not-valid`, and what `readAs` refuses of the name
 */
export async function enrolDevice(store: Store, { code, name }: { readonly code: string; readonly name: string }, by: By): Promise<{ readonly device: EnrolledDevice; readonly token: string }> {
  const token = randomBytes(32).toString('base64url')
  const device = await enrol(store, hashOf(code.toUpperCase().replaceAll(/[\s-]/g, '')), { name: readAs(deviceNameSchema, name, 'name'), token: hashOf(token) }, by)
  return { device, token }
}

/** The device that brings this token; null where it is none of ours, or was revoked. */
export async function deviceBringing(store: Store, token: string): Promise<EnrolledDevice | null> {
  return /^[\w-]{43}$/.test(token) ? await deviceWith(store, hashOf(token)) : null
}

export function listDevices(store: Store): Promise<EnrolledDevice[]> {
  return devicesOf(store)
}

/** @throws Refusal `device-not-known`, and what `readAs` refuses of the name */
export async function renameDevice(store: Store, id: string, name: string): Promise<void> {
  await nameDevice(store, id, readAs(deviceNameSchema, name, 'name'))
}

/**
 * Takes a device out, by its id or by its name where only one of those let in has it; from its next request on it is refused.
 *
 * @throws Refusal `device-not-known`, `which-device`
 */
export async function dismissDevice(store: Store, idOrName: string, { atIso }: By): Promise<EnrolledDevice> {
  const devices = await devicesOf(store)
  const named = devices.filter((one) => one.name === idOrName && one.revokedAtIso === null)
  const device = devices.find((one) => one.id === idOrName) ?? named[0]
  if (!device) throw new Refusal('device-not-known', { field: 'device', given: idOrName.slice(0, 60) })
  if (device.id !== idOrName && named.length > 1) throw new Refusal('which-device', { field: 'device', given: idOrName, needed: named.map(({ id }) => id) })
  await revokeDevice(store, device.id, atIso)
  return { ...device, revokedAtIso: device.revokedAtIso ?? atIso }
}

/** A random secret of 40 bits and more needs no salt; a code's 40 bits are out of date in minutes. */
const hashOf = (secret: string): string => createHash('sha256').update(secret).digest('hex')
