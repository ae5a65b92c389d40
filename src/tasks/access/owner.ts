import type { By } from '#model/change.ts'
import { Refusal } from '#model/refusal.ts'
import { keepPassphrase, type KeptPassphrase, keptPassphrase } from '#store/access.ts'
import type { Store } from '#store/store.ts'
import { hashPassphrase, isPassphrase } from '#tasks/access/passphrase.ts'

export async function ownerIsSet(store: Store): Promise<boolean> {
  return await keptPassphrase(store) !== null
}

/** @returns it as it is kept. @throws Refusal as `hashPassphrase` */
export async function setPassphrase(store: Store, passphrase: string, by: By): Promise<KeptPassphrase> {
  const kept = await hashPassphrase(passphrase)
  await keepPassphrase(store, kept, by)
  return kept
}

/** @returns it as it is kept. @throws Refusal `passphrase-not-set`, `passphrase-wrong`, `too-many-tries` */
export async function provePassphrase(store: Store, passphrase: string): Promise<KeptPassphrase> {
  const kept = await keptPassphrase(store)
  if (kept === null) throw new Refusal('passphrase-not-set')
  if (!await isPassphrase(passphrase, kept)) throw new Refusal('passphrase-wrong', { field: 'passphrase' })
  return kept
}
