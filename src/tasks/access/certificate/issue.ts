import 'reflect-metadata'
import { randomBytes } from 'node:crypto'
import { isIP } from 'node:net'
import { AsnConvert } from '@peculiar/asn1-schema'
import { GeneralName, GeneralSubtree, GeneralSubtrees, id_ce_nameConstraints, NameConstraints } from '@peculiar/asn1-x509'
import * as x509 from '@peculiar/x509'
import { privateNames, privateNetworks } from '#tasks/access/certificate/private.ts'

/** A certificate and its private key, as PEM texts. */
export type Issued = { readonly certificate: string; readonly key: string }

const keyKind = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' } as const
const dayMs = 86_400_000
/** Longer than any tablet stays in a shop. */
const authorityDays = 3650
/** The longest that all current browsers take for a server. @source CABF-BR (6.3.2) */
const serverDays = 397

/**
 * An authority of the shop's own, which devices are made to trust.
 *
 * It may vouch for nothing but `names`, private addresses and names of private networks: its key in wrong hands opens no
 * other site to whoever trusts it.
 *
 * @source RFC-5280 (4.2.1.9 basic constraints, 4.2.1.10 name constraints)
 */
export async function makeAuthority(names: readonly string[], nowMs: number): Promise<Issued> {
  const keys = await newKeys()
  const may = [...privateNames, ...names.filter((name) => isIP(name) === 0)].map((dNSName) => new GeneralName({ dNSName }))
  const mayAt = [...privateNetworks, ...names.filter((name) => isIP(name) !== 0).map((at) => `${at}/${isIP(at) === 4 ? 32 : 128}`)].map((iPAddress) => new GeneralName({ iPAddress }))
  const permittedSubtrees = new GeneralSubtrees([...may, ...mayAt].map((base) => new GeneralSubtree({ base })))
  const certificate = await x509.X509CertificateGenerator.createSelfSigned({
    serialNumber: newSerial(), name: `CN=Twinrest authority of this shop ${newSerial().slice(2, 8)}`, ...validFor(authorityDays, nowMs), signingAlgorithm: keyKind, keys,
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.keyCertSign, true),
      new x509.Extension(id_ce_nameConstraints, true, AsnConvert.serialize(new NameConstraints({ permittedSubtrees }))),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  })
  return await pemsOf(certificate, keys)
}

/** A certificate for the server under all the names and addresses it is reached by. */
export async function issueServer(authority: Issued, names: readonly string[], nowMs: number): Promise<Issued> {
  const keys = await newKeys(), by = new x509.X509Certificate(authority.certificate), validity = validFor(serverDays, nowMs)
  const signingKey = await crypto.subtle.importKey('pkcs8', x509.PemConverter.decodeFirst(authority.key), keyKind, false, ['sign'])
  const certificate = await x509.X509CertificateGenerator.create({
    serialNumber: newSerial(), subject: 'CN=Twinrest', issuer: by.subject, signingAlgorithm: keyKind, publicKey: keys.publicKey, signingKey,
    ...validity, notAfter: new Date(Math.min(validity.notAfter.getTime(), by.notAfter.getTime())),
    extensions: [
      new x509.BasicConstraintsExtension(false, undefined, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.digitalSignature, true),
      new x509.ExtendedKeyUsageExtension([x509.ExtendedKeyUsage.serverAuth]),
      new x509.SubjectAlternativeNameExtension(names.map((value) => ({ type: isIP(value) === 0 ? 'dns' as const : 'ip' as const, value }))),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
      await x509.AuthorityKeyIdentifierExtension.create(by),
    ],
  })
  return await pemsOf(certificate, keys)
}

const newKeys = (): Promise<CryptoKeyPair> => crypto.subtle.generateKey(keyKind, true, ['sign', 'verify'])

/** Sixteen random bytes, a positive number. */
function newSerial(): string {
  const bytes = randomBytes(16)
  bytes[0] = (bytes[0]! & 0x7f) | 0x40
  return bytes.toString('hex')
}

/** From a day ago on, for devices whose clock is slow. */
function validFor(days: number, nowMs: number): { readonly notBefore: Date; readonly notAfter: Date } {
  return { notBefore: new Date(nowMs - dayMs), notAfter: new Date(nowMs - dayMs + days * dayMs) }
}

async function pemsOf(certificate: x509.X509Certificate, { privateKey }: CryptoKeyPair): Promise<Issued> {
  return { certificate: `${certificate.toString('pem')}\n`, key: `${x509.PemConverter.encode(await crypto.subtle.exportKey('pkcs8', privateKey), 'PRIVATE KEY')}\n` }
}
