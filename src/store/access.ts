import type { EnrolledDevice } from '#model/access.ts'
import type { By } from '#model/change.ts'
import { Refusal } from '#model/refusal.ts'
import { inTransaction, type Store } from '#store/store.ts'

/** The passphrase as it is kept: what scrypt made of it, with which salt and at which cost. */
export type KeptPassphrase = { readonly salt: string; readonly hash: string; readonly cost: string }

/** Keeps the hash of a code that lets one device in until `untilIso`; codes that ran out are taken away. */
export async function addInvite(store: Store, hash: string, untilIso: string, { person, device, atIso }: By): Promise<void> {
  await inTransaction(store, async (tx) => {
    await tx.db.deleteFrom('invite').where('shop', '=', tx.shop).where('untilIso', '<=', atIso).execute()
    await tx.db.insertInto('invite').values({ shop: tx.shop, person, device, id: hash, atIso, untilIso, usedBy: null }).execute()
  })
}

/**
 * Lets a device in by a code, which is used up by it.
 *
 * @param token  the hash of the token the device gets
 * @throws Refusal `enrol-code-not-valid` for a code that nobody made, that was used or that ran out: which of them is not told
 */
export async function enrol(store: Store, code: string, { name, token }: { readonly name: string; readonly token: string }, { person, device, atIso, newId }: By): Promise<EnrolledDevice> {
  return await inTransaction(store, async (tx) => {
    const id = newId()
    const { numUpdatedRows } = await tx.db.updateTable('invite').set({ usedBy: id })
      .where('shop', '=', tx.shop).where('id', '=', code).where('usedBy', 'is', null).where('untilIso', '>', atIso).executeTakeFirst()
    if (numUpdatedRows === 0n) throw new Refusal('enrol-code-not-valid', { field: 'code' })
    await tx.db.insertInto('enrolled').values({ shop: tx.shop, person, device, id, name, token, atIso, revokedAtIso: null }).execute()
    return { id, name, atIso, revokedAtIso: null }
  })
}

/** The device that holds a token and was not revoked; null for any other token. */
export async function deviceWith(store: Store, token: string): Promise<EnrolledDevice | null> {
  return await devices(store).where('token', '=', token).where('revokedAtIso', 'is', null).executeTakeFirst() ?? null
}

/** All devices ever let in, in the order they came. */
export async function devicesOf(store: Store): Promise<EnrolledDevice[]> {
  return await devices(store).orderBy('atIso').orderBy('id').execute()
}

/** @throws Refusal `device-not-known` */
export async function nameDevice(store: Store, id: string, name: string): Promise<void> {
  const { numUpdatedRows } = await store.db.updateTable('enrolled').set({ name }).where('shop', '=', store.shop).where('id', '=', id).executeTakeFirst()
  if (numUpdatedRows === 0n) throw new Refusal('device-not-known', { field: 'device', given: id })
}

/** From the next request on the device is refused; a device already revoked stays as it was. @throws Refusal `device-not-known` */
export async function revokeDevice(store: Store, id: string, atIso: string): Promise<void> {
  await inTransaction(store, async (tx) => {
    const known = await devices(tx).where('id', '=', id).executeTakeFirst()
    if (!known) throw new Refusal('device-not-known', { field: 'device', given: id })
    await tx.db.updateTable('enrolled').set({ revokedAtIso: atIso }).where('shop', '=', tx.shop).where('id', '=', id).where('revokedAtIso', 'is', null).execute()
  })
}

export async function keptPassphrase(store: Store): Promise<KeptPassphrase | null> {
  return await store.db.selectFrom('owner').select(['salt', 'hash', 'cost']).where('shop', '=', store.shop).executeTakeFirst() ?? null
}

/** Puts a passphrase in the place of the one before. */
export async function keepPassphrase(store: Store, { salt, hash, cost }: KeptPassphrase, { person, device, atIso }: By): Promise<void> {
  await store.db.insertInto('owner').values({ shop: store.shop, person, device, salt, hash, cost, atIso })
    .onConflict((clash) => clash.column('shop').doUpdateSet({ person, device, salt, hash, cost, atIso })).execute()
}

function devices({ db, shop }: Store) {
  return db.selectFrom('enrolled').select(['id', 'name', 'atIso', 'revokedAtIso']).where('shop', '=', shop)
}
