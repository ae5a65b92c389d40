import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { readFileSync, copyFileSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { isCode } from '#model/code.ts'
import { openStore } from '#store/open.ts'
import type { Store } from '#store/store.ts'
import { deviceBringing, dismissDevice, enrolDevice, inviteDevice, listDevices, renameDevice } from '#tasks/access/devices.ts'
import { ownerIsSet, provePassphrase, setPassphrase } from '#tasks/access/owner.ts'
import { makerFor } from '#tasks/maker.ts'

let folder: string, store: Store
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'twinrest-access-'))
  store = await openStore(folder)
})
afterEach(async () => {
  await store.close()
  rmSync(folder, { recursive: true })
})

const by = (atIso = new Date().toISOString()) => ({ ...makerFor('KM', 'tablet'), atIso })
const refused = (code: string) => expect.objectContaining({ name: 'Refusal', code }) as Error

describe('a device', () => {
  test('is let in once by a code, however it is typed, and told by its token from then on', async () => {
    const { code, untilIso } = await inviteDevice(store, by('2025-03-04T05:00:00.000Z'))
    expect([isCode(code), untilIso]).toEqual([true, '2025-03-04T05:10:00.000Z'])
    const typed = ` ${code.slice(0, 4).toLowerCase()}-${code.slice(4)}`
    const { device, token } = await enrolDevice(store, { code: typed, name: ' Tablet at the mill ' }, by('2025-03-04T05:09:59.999Z'))
    expect(device).toMatchObject({ name: 'Tablet at the mill', revokedAtIso: null })
    // 32 random bytes as base64url are 43 letters. RFC 4648, 5.
    expect(token).toMatch(/^[A-Za-z0-9_-]{43}$/)
    expect(await deviceBringing(store, token)).toEqual(device)
    await expect(enrolDevice(store, { code, name: 'second' }, by('2025-03-04T05:09:59.999Z'))).rejects.toThrow(refused('enrol-code-not-valid'))
  })

  test('is not let in by a code that ran out, that nobody made, or without a name', async () => {
    const { code } = await inviteDevice(store, by('2025-03-04T05:00:00.000Z'))
    await expect(enrolDevice(store, { code, name: 'late' }, by('2025-03-04T05:10:00.000Z'))).rejects.toThrow(refused('enrol-code-not-valid'))
    await expect(enrolDevice(store, { code: '22222222', name: 'guess' }, by())).rejects.toThrow(refused('enrol-code-not-valid'))
    await expect(enrolDevice(store, { code, name: '   ' }, by('2025-03-04T05:01:00.000Z'))).rejects.toMatchObject({ facts: { field: 'name' } })
    expect(await listDevices(store)).toEqual([])
  })

  test('two that come with one code at once: one is let in', async () => {
    const { code } = await inviteDevice(store, by())
    const came = await Promise.allSettled([1, 2, 3, 4].map((n) => enrolDevice(store, { code, name: `tablet ${n}` }, by())))
    expect(came.filter(({ status }) => status === 'fulfilled')).toHaveLength(1)
  })

  test('is named, and taken out by id or by a name that one alone has', async () => {
    const enrolled = []
    for (const name of ['mill', 'mill', 'office']) enrolled.push(await enrolDevice(store, { code: (await inviteDevice(store, by())).code, name }, by()))
    await expect(dismissDevice(store, 'mill', by())).rejects.toThrow(refused('which-device'))
    await expect(dismissDevice(store, 'nobody', by())).rejects.toThrow(refused('device-not-known'))
    await renameDevice(store, enrolled[1]!.device.id, 'grinder')
    await dismissDevice(store, 'mill', by())
    await dismissDevice(store, enrolled[1]!.device.id, by())
    expect(await Promise.all(enrolled.map(async ({ token }) => (await deviceBringing(store, token))?.name ?? null))).toEqual([null, null, 'office'])
    expect((await listDevices(store)).map(({ name }) => name).sort()).toEqual(['grinder', 'mill', 'office'])
    await expect(renameDevice(store, 'nobody', 'x')).rejects.toThrow(refused('device-not-known'))
  })

  test('whatever is no token of ours is nobody', async () => {
    for (const token of ['', 'x', '%', 'a'.repeat(43), 'a'.repeat(100_000), "' or 1=1 --"]) expect(await deviceBringing(store, token)).toBeNull()
  })
})

describe("the owner's passphrase", () => {
  test('is proved by the same letters, however they are made', async () => {
    expect(await ownerIsSet(store)).toBe(false)
    await expect(provePassphrase(store, 'three parallels on a plate')).rejects.toThrow(refused('passphrase-not-set'))
    await setPassphrase(store, 'drei Unterlagen über Öl', by())
    expect(await ownerIsSet(store)).toBe(true)
    // ü as one letter, and as u with two dots set over it (Unicode Standard Annex 15).
    await provePassphrase(store, ' drei Unterlagen u\u0308ber O\u0308l')
    await expect(provePassphrase(store, 'drei unterlagen über Öl')).rejects.toThrow(refused('passphrase-wrong'))
    await setPassphrase(store, 'another short sentence', by())
    await expect(provePassphrase(store, 'drei Unterlagen über Öl')).rejects.toThrow(refused('passphrase-wrong'))
  })

  test('is what scrypt of another hand makes of it', async () => {
    // Hashed by Python's hashlib.scrypt in the released database (fixtures/databases/README.md).
    const released = mkdtempSync(join(tmpdir(), 'twinrest-access-'))
    copyFileSync(resolve(import.meta.dirname, '../../../fixtures/databases/schema-4.sqlite'), join(released, 'shop.sqlite'))
    const old = await openStore(released)
    await provePassphrase(old, 'three parallels on a plate')
    await expect(provePassphrase(old, 'three parallels on a vise')).rejects.toThrow(refused('passphrase-wrong'))
    await old.close()
    rmSync(released, { recursive: true })
  })

  test('has fifteen letters or more, and an end', async () => {
    await expect(setPassphrase(store, 'short and sweet'.slice(1), by())).rejects.toThrow(refused('passphrase-too-short'))
    await expect(setPassphrase(store, `${' '.repeat(20)}short`, by())).rejects.toThrow(refused('passphrase-too-short'))
    await expect(setPassphrase(store, 'x'.repeat(201), by())).rejects.toThrow(refused('passphrase-too-long'))
    expect(await ownerIsSet(store)).toBe(false)
  })

  test('is hashed for two at once and no more, and others go on meanwhile', async () => {
    await setPassphrase(store, 'three parallels on a plate', by())
    let turns = 0
    const turning = setInterval(() => { turns += 1 }, 5)
    const tried = await Promise.allSettled([1, 2, 3, 4, 5].map(() => provePassphrase(store, 'three parallels on a plate')))
    clearInterval(turning)
    expect(tried.filter(({ status }) => status === 'fulfilled')).toHaveLength(2)
    expect(tried.flatMap((one) => (one.status === 'rejected' ? [(one.reason as { code: string }).code] : []))).toEqual(['too-many-tries', 'too-many-tries', 'too-many-tries'])
    expect(turns).toBeGreaterThan(5)
  })
})

test('neither code, token nor passphrase is in the files of the shop', async () => {
  const { code } = await inviteDevice(store, by()), unused = await inviteDevice(store, by())
  const { token } = await enrolDevice(store, { code, name: 'mill' }, by())
  await setPassphrase(store, 'three parallels on a plate', by())
  const bytes = readdirSync(folder).map((name) => readFileSync(join(folder, name)).toString('latin1')).join('')
  for (const secret of [code, unused.code, token, 'three parallels']) expect(bytes).not.toContain(secret)
  expect(bytes).toContain('mill')
})
