import { createPrivateKey, X509Certificate } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { Refusal } from '#model/refusal.ts'
import { networkNames, ownNames } from '#server/access/machine-names.ts'
import type { Config } from '#server/config.ts'
import { hasCertificate, namesVouchedFor, renewCertificate } from '#tasks/access/certificate/shop-certificate.ts'

/** What the server proves itself with on https. */
export type Shown = {
  readonly cert: string
  readonly key: string
  /** The shop's own authority; null where the certificate came from elsewhere. */
  readonly authority: { readonly pem: string; readonly fingerprint: string } | null
}

/**
 * The certificate to show now: the given files as they stand, or the shop's own, made anew where it nears its end or the
 * machine has come to another address. Null: plain http.
 *
 * @throws Refusal `file-not-readable`, `certificate-not-usable`
 */
export async function shownCertificate({ open, certificate, dataFolder, hostNames }: Omit<Config, 'port' | 'demo'>, nowMs: number): Promise<Shown | null> {
  if (certificate !== null) return { ...await given(certificate), authority: null }
  if (open !== 'network' || !hasCertificate(dataFolder)) return null
  const shown = await renewCertificate(dataFolder, await namesVouchedFor(dataFolder, [...networkNames(hostNames), ...ownNames]), nowMs)
  return { cert: shown.certificate, key: shown.key, authority: { pem: shown.authority, fingerprint: shown.fingerprint } }
}

async function given({ certificate, key }: { readonly certificate: string; readonly key: string }): Promise<{ readonly cert: string; readonly key: string }> {
  const pair = { cert: await textIn(certificate), key: await textIn(key) }
  try {
    if (!new X509Certificate(pair.cert).checkPrivateKey(createPrivateKey(pair.key))) throw new Error('the key belongs to another certificate')
  } catch (error) {
    throw new Refusal('certificate-not-usable', { given: certificate, reason: error instanceof Error ? error.message : 'unknown' })
  }
  return pair
}

async function textIn(file: string): Promise<string> {
  try {
    return await readFile(file, 'utf8')
  } catch (error) {
    throw new Refusal('file-not-readable', { given: file, reason: error instanceof Error && 'code' in error ? String(error.code) : 'unknown' })
  }
}
