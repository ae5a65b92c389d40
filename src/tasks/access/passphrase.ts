import { randomBytes, scrypt, timingSafeEqual } from 'node:crypto'
import { Refusal } from '#model/refusal.ts'
import type { KeptPassphrase } from '#store/access.ts'

/** 32 MiB and about a quarter of a second for each try (measured). @source OWASP-PASSWORD */
const usualCost = { N: 2 ** 15, r: 8, p: 3 }
/** Hashes at work at once: each holds 32 MiB and one of Node's four helpers. */
const mostAtOnce = 2
/** @source NIST-800-63B (a secret that stands alone) */
const fewestLetters = 15, mostLetters = 200

/** @throws Refusal `passphrase-too-short`, `passphrase-too-long`, `too-many-tries` while others are being hashed */
export async function hashPassphrase(passphrase: string): Promise<KeptPassphrase> {
  const letters = plain(passphrase).length
  if (letters < fewestLetters) throw new Refusal('passphrase-too-short', { field: 'passphrase', needed: fewestLetters })
  if (letters > mostLetters) throw new Refusal('passphrase-too-long', { field: 'passphrase', needed: mostLetters })
  const salt = randomBytes(16), { N, r, p } = usualCost
  return { salt: salt.toString('base64'), hash: (await hashed(passphrase, salt, usualCost)).toString('base64'), cost: `${N},${r},${p}` }
}

/** @throws Refusal `too-many-tries` while others are being hashed */
export async function isPassphrase(passphrase: string, kept: KeptPassphrase): Promise<boolean> {
  if (passphrase.length > mostLetters * 4) return false
  const [N, r, p] = kept.cost.split(',').map(Number) as [number, number, number]
  return timingSafeEqual(await hashed(passphrase, Buffer.from(kept.salt, 'base64'), { N, r, p }), Buffer.from(kept.hash, 'base64'))
}

/** The same letters however a keyboard makes them, and no blanks around. */
const plain = (passphrase: string): string => passphrase.normalize('NFKC').trim()

let atWork = 0

/** In Node's own helpers, so that nobody else waits meanwhile. */
async function hashed(passphrase: string, salt: Buffer, cost: { readonly N: number; readonly r: number; readonly p: number }): Promise<Buffer> {
  if (atWork >= mostAtOnce) throw new Refusal('too-many-tries', { waitS: 1 })
  atWork += 1
  try {
    return await new Promise((done, failed) => {
      scrypt(plain(passphrase), salt, 32, { ...cost, maxmem: 64 * 1024 * 1024 }, (error, key) => (error ? failed(error) : done(key)))
    })
  } finally { atWork -= 1 }
}
