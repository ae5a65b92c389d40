import { createHash } from 'node:crypto'
import { copyFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { editOf, firstChange } from '#model/record-fields.ts'
import type { ShopFile } from '#model/shop-file.ts'
import { keepPassphrase } from '#store/access.ts'
import { applyChanges } from '#store/changes.ts'
import { examineFile } from '#store/examine.ts'
import { slotFields } from '#store/example-records.ts'
import { databaseFile, openStore } from '#store/open.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'
import { addTold } from '#store/told.ts'
import { enrolDevice, inviteDevice } from '#tasks/access/devices.ts'
import { makerFor } from '#tasks/maker.ts'
import { importRack } from '#tasks/rack/import-rack.ts'
import { type Backup, backupsMost, listBackups, makeBackup, restoreBackup, toDrop } from '#tasks/shop/backup/backups.ts'
import { exportShop, importShop } from '#tasks/shop/backup/shop-file.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'

const by = makerFor('KM', 'bench'), atMs = Date.parse('2026-03-04T05:06:07.000Z')
let folder: string, backups: string, store: Store
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'twinrest-backup-'))
  backups = join(folder, 'backups')
  store = await openStore(folder)
})
afterEach(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

const named = async (name: string, at = store) => { await applyChanges(at, [editOf('shop', await recordOf(at, 'shop', 'shop'), { name }, by)]) }
/** What a file holds, looked at in a copy of it. */
async function inFile<Result>(file: string, look: (store: Store) => Promise<Result>): Promise<Result> {
  const place = mkdtempSync(join(folder, 'look-'))
  copyFileSync(file, join(place, databaseFile))
  const copy = await openStore(place)
  try { return await look(copy) } finally { await copy.close(); rmSync(place, { recursive: true }) }
}
const nameNow = async () => { const now = await openStore(folder), { name } = await recordOf(now, 'shop', 'shop'); await now.close(); return name }

describe('a backup', () => {
  test('is a sound database of its own with all that was there, for its owner alone to read', async () => {
    await loadDemo(store)
    const { name, bytes } = await makeBackup(store, backups, atMs), file = join(backups, name)
    expect([name, statSync(file).size, statSync(file).mode & 0o777]).toEqual(['shop-2026-03-04T05-06-07-000Z.sqlite', bytes, 0o600])
    examineFile(file)
    expect(await inFile(file, snapshotOf)).toEqual(await snapshotOf(store))
    expect(readdirSync(backups)).toEqual([name])
  })

  test('taken while others write holds each of their acts whole', async () => {
    let running = true, written = 0
    const writing = (async () => {
      while (running) {
        const id = by.newId()
        await applyChanges(store, [firstChange('slot', `a${id}`, slotFields(by.newCode()), by), firstChange('slot', `b${id}`, slotFields(by.newCode()), by)])
        written += 1
        await new Promise((done) => { setImmediate(done) })
      }
    })()
    for (let at = 0; at < 5; at += 1) {
      while (written < 3 * at) await new Promise((done) => { setTimeout(done, 1) })
      await makeBackup(store, backups, atMs + at)
    }
    running = false
    await writing
    expect(written).toBeGreaterThan(5)
    for (const { name } of listBackups(backups)) {
      const ids = await inFile(join(backups, name), async (copy) => (await recordsOf(copy, 'slot')).map(({ id }) => id))
      expect(ids.filter((id) => !ids.includes((id.startsWith('a') ? 'b' : 'a') + id.slice(1)))).toEqual([])
    }
  })

  test('is kept among the last thirty and ninety days; the newest whatever its age', () => {
    const dayMs = 86_400_000, daily = (count: number, fromDay: number): Backup[] => Array.from({ length: count }, (_none, at) => ({ name: `${at}`, atIso: new Date(atMs - (fromDay + at) * dayMs).toISOString(), bytes: 1 }))
    expect(toDrop(daily(backupsMost, 0), atMs)).toEqual([])
    expect(toDrop(daily(backupsMost + 2, 0), atMs).map(({ name }) => name)).toEqual(['30', '31'])
    expect(toDrop(daily(5, 88), atMs).map(({ name }) => name)).toEqual(['3', '4'])
    expect(toDrop(daily(3, 1000), atMs).map(({ name }) => name)).toEqual(['1', '2'])
  })

  test('drops the old ones and nothing else in the folder', async () => {
    for (let at = 0; at < backupsMost + 1; at += 1) { if (at === 1) writeFileSync(join(backups, 'shop-of-mine.sqlite'), 'mine'); await makeBackup(store, backups, atMs + at) }
    expect(listBackups(backups)).toHaveLength(backupsMost)
    expect(existsSync(join(backups, 'shop-of-mine.sqlite'))).toBe(true)
  })

  test('that has no room, or whose folder cannot be made, is refused and leaves nothing', async () => {
    await loadDemo(store)
    const bad = join(folder, 'a-file')
    writeFileSync(bad, '')
    await expect(makeBackup(store, join(bad, 'backups'), atMs)).rejects.toMatchObject({ code: 'data-folder-not-writable' })
  })
})

describe('restoring', () => {
  test('puts the backup in place and keeps the shop before', async () => {
    await named('then')
    const { name } = await makeBackup(store, backups, atMs)
    await named('later')
    await store.close()
    const keptAs = restoreBackup(folder, backups, name, atMs + 1)
    expect(await nameNow()).toBe('then')
    restoreBackup(folder, backups, join(folder, keptAs!), atMs + 2)
    expect(await nameNow()).toBe('later')
    store = await openStore(folder)
  })

  test('is refused while the shop is open, and changes nothing', async () => {
    await named('then')
    const { name } = await makeBackup(store, backups, atMs), before = readdirSync(folder).sort()
    await named('later')
    expect(() => restoreBackup(folder, backups, name, atMs)).toThrow(expect.objectContaining({ code: 'shop-is-open' }) as Error)
    expect(readdirSync(folder).sort()).toEqual(before)
    expect(await nameNow()).toBe('later')
  })

  test('keeps what a program that was cut off had acknowledged', async () => {
    await named('then')
    const { name } = await makeBackup(store, backups, atMs), cut = mkdtempSync(join(folder, 'cut-'))
    await named('in the log')
    // As a power cut leaves it: the log lies beside, not yet in the file.
    for (const end of ['', '-wal']) writeFileSync(join(cut, databaseFile + end), readFileSync(join(folder, databaseFile + end)))
    const keptAs = restoreBackup(cut, backups, name, atMs)!
    expect(await inFile(join(cut, keptAs), async (copy) => (await recordOf(copy, 'shop', 'shop')).name)).toBe('in the log')
    expect(readdirSync(cut).sort()).toEqual([keptAs, databaseFile].sort())
  })

  test('takes the place of a damaged database, which is kept as it is', async () => {
    await loadDemo(store)
    const { name } = await makeBackup(store, backups, atMs)
    await store.close()
    const spoilt = readFileSync(join(folder, databaseFile)).fill(0x5a, 4096, 3 * 4096)
    writeFileSync(join(folder, databaseFile), spoilt)
    await expect(openStore(folder)).rejects.toMatchObject({ code: 'database-damaged' })
    const keptAs = restoreBackup(folder, backups, name, atMs)!
    // Less the head of the file, which says how it was last opened.
    expect(readFileSync(join(folder, keptAs)).subarray(100).equals(spoilt.subarray(100))).toBe(true)
    store = await openStore(folder)
    expect((await recordsOf(store, 'bar')).length).toBeGreaterThan(5)
  })

  test('refuses what is no sound backup of ours', async () => {
    await loadDemo(store)
    const { name } = await makeBackup(store, backups, atMs), spoilt = join(folder, 'spoilt.sqlite'), nothing = join(folder, 'nothing.sqlite')
    writeFileSync(spoilt, readFileSync(join(backups, name)).fill(0x5a, 4096, 3 * 4096))
    writeFileSync(nothing, '')
    await store.close()
    const refused = (given: string, code: string) => expect(() => restoreBackup(folder, backups, given, atMs), given).toThrow(expect.objectContaining({ code }) as Error)
    refused(spoilt, 'database-damaged')
    refused(nothing, 'database-not-ours')
    refused('../backups/x', 'file-not-there')
    refused(join(folder, 'none.sqlite'), 'file-not-there')
    store = await openStore(folder)
    expect((await recordsOf(store, 'bar')).length).toBeGreaterThan(5)
  })
})

describe('the whole shop as data', () => {
  test('comes back the same in an empty shop, with its history', async () => {
    await loadDemo(store)
    await named('Back room')
    await importRack(store, { id: 'file-1', csv: 'height,thickness,length\n35,8,150\n', unit: 'mm' }, by)
    const [setup] = await recordsOf(store, 'setup')
    await addTold(store, { id: 't-1', setupId: setup!.id, checkId: null, jobId: null, what: 'setup sheet', data: { seatMm: 35 }, person: 'KM', device: 'bench', atIso: by.atIso })
    const file = JSON.parse(JSON.stringify(await exportShop(store))) as ShopFile, other = await openStore(':memory:')
    expect(await importShop(other, file)).toEqual({ changes: file.changes.length, checks: file.checks.length, events: file.events.length })
    expect(await exportShop(other)).toEqual(file)
    expect(await snapshotOf(other)).toEqual(await snapshotOf(store))
    expect(file).toMatchObject({ told: [{ id: 't-1' }], imports: [{ id: 'file-1' }] })
    await expect(importShop(other, file)).rejects.toMatchObject({ code: 'import-not-empty' })
    await other.close()
  })

  test('holds nothing that lets anybody in', async () => {
    await keepPassphrase(store, { salt: 'SALT', hash: 'HASHHASH', cost: '1,1,1' }, by)
    const { code } = await inviteDevice(store, by), { token } = await enrolDevice(store, { code, name: 'Tablet' }, by)
    expect(JSON.stringify(await exportShop(store))).not.toMatch(new RegExp(`HASHHASH|SALT|Tablet|${code}|${token}|${createHash('sha256').update(token).digest('hex')}`))
  })

  test('that is amiss anywhere comes in nowhere', async () => {
    const full = await openStore(':memory:')
    await loadDemo(full)
    const file = await exportShop(full), before = await exportShop(store)
    await full.close()
    for (const [wrong, code] of [
      [{ ...file, version: 2 }, 'unknown-word'], [{ ...file, more: 1 }, 'unknown-key'], [{ ...file, changes: [] }, 'bar-not-known'],
      [{ ...file, events: [...file.events, { ...file.events[0]!, id: 'e', bar: 'nobody' }] }, 'bar-not-known'], ['text', 'value-not-allowed'],
    ] as const) {
      await expect(importShop(store, wrong), code).rejects.toMatchObject({ code })
      expect(await exportShop(store)).toEqual(before)
    }
  })
})
