import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { firstChange } from '#model/record-fields.ts'
import { addInvite, devicesOf, enrol, keepPassphrase, keptPassphrase } from '#store/access.ts'
import { applyChanges } from '#store/changes.ts'
import { barFields, byFrom } from '#store/example-records.ts'
import { moveShop, sumOf } from '#store/move.ts'
import { openStore } from '#store/open.ts'
import type { Store } from '#store/store.ts'
import { everythingOf } from '#store/whole.ts'
import { loadDemo } from '#tasks/shop/load-demo.ts'
import { snapshotOf } from '#tasks/shop/snapshot.ts'
import { twinrest } from '../cli/command.ts'
import { type Cluster, startCluster } from './cluster.ts'

let cluster: Cluster, folder: string, source: Store
const by = byFrom('KM')
beforeAll(async () => { cluster = await startCluster() })
afterAll(() => cluster.clear())
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'twinrest-move-'))
  source = await openStore(join(folder, 'from'))
  await loadDemo(source)
  await addInvite(source, 'code', '2099-01-01T00:00:00.000Z', by)
  await enrol(source, 'code', { name: 'Tablet', token: 'token' }, by)
  await keepPassphrase(source, { salt: 's', hash: 'h', cost: 'c' }, by)
})
afterEach(async () => { await source.close(); rmSync(folder, { recursive: true, force: true }) })

test('a shop goes over and comes back without loss, its devices and passphrase too', async () => {
  const target = await openStore(await cluster.makeDatabase('over')), back = await openStore(join(folder, 'back')), told: string[] = []
  const { rows, sum } = await moveShop(source, target, ({ table }) => told.push(table))
  expect(sum).toBe(await sumOf(source))
  expect(await everythingOf(target)).toEqual(await everythingOf(source))
  expect(await snapshotOf(target)).toEqual(await snapshotOf(source))
  expect([await devicesOf(target), await keptPassphrase(target)]).toEqual([await devicesOf(source), await keptPassphrase(source)])
  expect(rows).toMatchObject({ enrolled: 1, owner: 1 })
  expect(told).toEqual(expect.arrayContaining(['change', 'bar', 'reading', 'event']))
  expect((await moveShop(target, back, () => undefined)).sum).toBe(sum)
  expect(await everythingOf(back)).toEqual(await everythingOf(source))
  await target.close()
  await back.close()
})

test('a target that holds something is refused and left as it was', async () => {
  const target = await openStore(await cluster.makeDatabase('held'))
  await applyChanges(target, [firstChange('bar', 'mine', barFields('ABCD2345'), byFrom('JO'))])
  const before = await sumOf(target)
  await expect(moveShop(source, target, () => undefined)).rejects.toMatchObject({ code: 'move-not-empty' })
  expect(await sumOf(target)).toBe(before)
  await target.close()
})

test('a shop that is written into while it moves is not moved', async () => {
  const target = await openStore(await cluster.makeDatabase('meanwhile')), before = await sumOf(target)
  let written = false
  await expect(moveShop(source, target, ({ table }) => {
    if (table !== 'event' || written) return
    written = true
    void applyChanges(source, [firstChange('slot', 'late', { code: 'ABCD2399', name: 'L1' }, byFrom('JO'))])
  })).rejects.toMatchObject({ code: 'move-differs' })
  expect(await sumOf(target)).toBe(before)
  await target.close()
})

test('the command moves a shop of a name and says the sum; one that nobody began is refused', async () => {
  const env = { TWINREST_DATABASE_URL: await cluster.makeDatabase('by_hand'), TWINREST_SHOP: 'north' }, data = join(folder, 'from')
  const lost = await twinrest(['rack', 'list'], { env })
  expect([lost.code, lost.err]).toEqual([2, expect.stringContaining('no shop north')])
  const moved = await twinrest(['move', 'database', '--data', data], { env })
  expect([moved.code, moved.out]).toEqual([0, `${await sumOf(source)}\n`])
  expect(moved.err).toMatch(/change: (\d+) of \1\n/)
  expect((await twinrest(['rack', 'list'], { env })).out).toBe((await twinrest(['rack', 'list', '--data', data])).out)
  expect((await twinrest(['move', 'database', '--data', data], { env })).code).toBe(2)
  expect((await twinrest(['backup', '--data', data], { env })).code).toBe(2)
  expect((await twinrest(['move', 'folder', '--data', join(folder, 'again')], { env })).out).toBe(moved.out)
})
