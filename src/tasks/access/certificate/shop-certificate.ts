import { createPrivateKey, X509Certificate } from 'node:crypto'
import { existsSync } from 'node:fs'
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import { isIP } from 'node:net'
import { join } from 'node:path'
import type { Issued } from '#tasks/access/certificate/issue.ts'
import { isPrivate } from '#tasks/access/certificate/private.ts'

/** What the server shows, and the authority that devices are made to trust. */
export type ShopCertificate = {
  readonly certificate: string
  readonly key: string
  readonly authority: string
  /** SHA-256 of the authority, as devices show it. */
  readonly fingerprint: string
  readonly names: readonly string[]
  readonly untilIso: string
  /** What was done about it now. */
  readonly made: 'authority' | 'certificate' | 'nothing'
}

/** A certificate is made anew when less than this is left of it. */
const renewDays = 30
const dayMs = 86_400_000

/**
 * The certificate of a shop, in `certificate/` of its data folder: made the first time, made anew before it runs out and when
 * the machine has come to other names. Devices that trust the authority notice nothing.
 *
 * @param reachedBy  names and addresses of the machine; one that is not private and that the authority was not made for
 *                   needs a new authority, which every device has to be made to trust (`namesVouchedFor` tells them apart)
 */
export async function renewCertificate(dataFolder: string, reachedBy: readonly string[], nowMs: number, { newAuthority = false } = {}): Promise<ShopCertificate> {
  const folder = folderIn(dataFolder), names = [...new Set([...reachedBy, ...await ownNames(folder)])], others = names.filter((name) => !isPrivate(name))
  const kept = newAuthority ? null : await readPair(folder, 'authority')
  const stands = kept !== null && daysLeft(kept.certificate, nowMs) > renewDays && (await namesVouchedFor(dataFolder, names)).length === names.length
  const { issueServer, makeAuthority } = await import('#tasks/access/certificate/issue.ts')
  const authority = stands ? kept : await makeAuthority(others, nowMs)
  if (!stands) {
    await writePair(folder, 'authority', authority)
    await writeWhole(join(folder, 'names.json'), JSON.stringify(others))
  }
  const server = stands ? await readPair(folder, 'server') : null
  const serves = server !== null && daysLeft(server.certificate, nowMs) > renewDays && names.every((name) => isNamed(server.certificate, name))
  const shown = serves ? server : await issueServer(authority, names, nowMs)
  if (!serves) await writePair(folder, 'server', shown)
  return shopCertificate(shown, authority, names, stands ? (serves ? 'nothing' : 'certificate') : 'authority')
}

/** Whether a certificate was made for this shop. */
export function hasCertificate(dataFolder: string): boolean {
  return existsSync(join(folderIn(dataFolder), 'authority.pem'))
}

/** The names among these that the standing authority vouches for. A new one would have to be trusted by every device. */
export async function namesVouchedFor(dataFolder: string, names: readonly string[]): Promise<readonly string[]> {
  const own = await ownNames(folderIn(dataFolder))
  return names.filter((name) => isPrivate(name) || own.includes(name))
}

/** In groups of two, as devices show it. */
export function fingerprintOf(pem: string): string {
  return new X509Certificate(pem).fingerprint256
}

export function isNamed(pem: string, name: string): boolean {
  const certificate = new X509Certificate(pem)
  return (isIP(name) === 0 ? certificate.checkHost(name) : certificate.checkIP(name)) !== undefined
}

function shopCertificate(shown: Issued, authority: Issued, names: readonly string[], made: ShopCertificate['made']): ShopCertificate {
  return {
    certificate: shown.certificate, key: shown.key, authority: authority.certificate, fingerprint: fingerprintOf(authority.certificate),
    names, untilIso: new Date(new X509Certificate(shown.certificate).validTo).toISOString(), made,
  }
}

const folderIn = (dataFolder: string): string => join(dataFolder, 'certificate')

/** What the authority may vouch for besides what is private. */
async function ownNames(folder: string): Promise<readonly string[]> {
  const file = join(folder, 'names.json')
  return existsSync(file) ? JSON.parse(await readFile(file, 'utf8')) as string[] : []
}

function daysLeft(pem: string, nowMs: number): number {
  return (Date.parse(new X509Certificate(pem).validTo) - nowMs) / dayMs
}

async function readPair(folder: string, name: string): Promise<Issued | null> {
  const [certificate, key] = [join(folder, `${name}.pem`), join(folder, `${name}-key.pem`)]
  if (!existsSync(certificate) || !existsSync(key)) return null
  const pair = { certificate: await readFile(certificate, 'utf8'), key: await readFile(key, 'utf8') }
  return new X509Certificate(pair.certificate).checkPrivateKey(createPrivateKey(pair.key)) ? pair : null
}

async function writePair(folder: string, name: string, { certificate, key }: Issued): Promise<void> {
  await mkdir(folder, { recursive: true, mode: 0o700 })
  await writeWhole(join(folder, `${name}-key.pem`), key)
  await writeWhole(join(folder, `${name}.pem`), certificate)
}

/** For this user's eyes alone, and never half. */
async function writeWhole(file: string, text: string): Promise<void> {
  await writeFile(`${file}.new`, text, { mode: 0o600 })
  await rename(`${file}.new`, file)
}
