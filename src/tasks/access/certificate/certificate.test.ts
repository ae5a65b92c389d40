import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { execFileSync } from 'node:child_process'
import { X509Certificate } from 'node:crypto'
import { createServer } from 'node:https'
import { request } from 'node:https'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { issueServer, makeAuthority } from '#tasks/access/certificate/issue.ts'
import { isPrivate } from '#tasks/access/certificate/private.ts'
import { hasCertificate, namesVouchedFor, renewCertificate } from '#tasks/access/certificate/shop-certificate.ts'

const nowMs = Date.now(), dayMs = 86_400_000
const names = ['shop-pc.local', 'localhost', '192.168.1.20', 'fd00::20']

let folder: string
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'twinrest-certificate-')) })
afterEach(() => rmSync(folder, { recursive: true }))

/** What OpenSSL says of a certificate for a name, an implementation that has nothing to do with ours. */
function openssl(authority: string, certificate: string, name: readonly string[]): string {
  writeFileSync(join(folder, 'ca.pem'), authority)
  writeFileSync(join(folder, 'it.pem'), certificate)
  try {
    return execFileSync('openssl', ['verify', '-x509_strict', '-purpose', 'sslserver', '-CAfile', join(folder, 'ca.pem'), ...name, join(folder, 'it.pem')], { encoding: 'utf8', stdio: 'pipe' }).trim().split(': ').at(-1)!
  } catch (error) { return (error as { stderr: string }).stderr }
}

describe('a certificate of the shop', () => {
  it('is taken by OpenSSL under each of its names, and under no other', async () => {
    const authority = await makeAuthority([], nowMs), { certificate } = await issueServer(authority, names, nowMs)
    expect(openssl(authority.certificate, certificate, ['-verify_hostname', 'shop-pc.local'])).toBe('OK')
    expect(openssl(authority.certificate, certificate, ['-verify_ip', '192.168.1.20'])).toBe('OK')
    expect(openssl(authority.certificate, certificate, ['-verify_ip', 'fd00::20'])).toBe('OK')
    expect(openssl(authority.certificate, certificate, ['-verify_ip', '192.168.1.21'])).toMatch(/mismatch/i)
    expect(openssl((await makeAuthority([], nowMs)).certificate, certificate, ['-verify_hostname', 'shop-pc.local'])).toMatch(/issuer certificate/)
  })

  it('vouches for nothing outside: OpenSSL refuses what the authority signs for another site', async () => {
    const authority = await makeAuthority(['shop.example'], nowMs)
    const foreign = async (name: string) => openssl(authority.certificate, (await issueServer(authority, [name], nowMs)).certificate, [])
    expect(await foreign('bank.example')).toMatch(/permitted subtree violation/)
    expect(await foreign('203.0.113.9')).toMatch(/permitted subtree violation/)
    expect(await foreign('shop.example')).toBe('OK')
    const under = await issueServer(authority, ['deep.local'], nowMs)
    expect(openssl(authority.certificate, (await issueServer({ ...under }, names, nowMs)).certificate, [])).toMatch(/issuer certificate|invalid CA/)
  })

  it('carries a connection for whoever trusts the authority, and for nobody else', async () => {
    const { certificate: cert, key, authority } = await renewCertificate(folder, ['localhost', '127.0.0.1'], nowMs)
    const server = createServer({ cert, key }, (_request, response) => response.end('here')).listen(0, '127.0.0.1')
    await new Promise((done) => { server.once('listening', done) })
    const ask = (ca?: string) => new Promise<string>((done) => {
      request({ port: (server.address() as AddressInfo).port, host: '127.0.0.1', ...(ca ? { ca } : {}), agent: false }, (answer) => { answer.setEncoding('utf8').on('data', done) })
        .on('error', (error: NodeJS.ErrnoException) => done(error.code!)).end()
    })
    expect(await ask(authority)).toBe('here')
    expect(await ask()).toMatch(/UNABLE_TO_VERIFY|SELF_SIGNED/)
    await new Promise((done) => { server.close(done) })
  })
})

describe('on its way through the years', () => {
  it('is made once, kept, made anew a month before its end, and the authority stays', async () => {
    expect(hasCertificate(folder)).toBe(false)
    const first = await renewCertificate(folder, names, nowMs)
    expect([first.made, hasCertificate(folder)]).toEqual(['authority', true])
    const later = await renewCertificate(folder, names, nowMs + 360 * dayMs)
    expect([later.made, later.certificate === first.certificate]).toEqual(['nothing', true])
    const renewed = await renewCertificate(folder, names, nowMs + 370 * dayMs)
    expect([renewed.made, renewed.fingerprint === first.fingerprint]).toEqual(['certificate', true])
    expect(Date.parse(renewed.untilIso)).toBeGreaterThan(nowMs + 760 * dayMs)
    expect((await renewCertificate(folder, names, nowMs + 3640 * dayMs)).made).toBe('authority')
  })

  it('follows the machine to another address, and keeps a name that was asked for', async () => {
    const first = await renewCertificate(folder, ['192.168.1.20', 'shop.example'], nowMs)
    const moved = await renewCertificate(folder, ['192.168.7.3'], nowMs)
    expect([moved.made, moved.fingerprint === first.fingerprint]).toEqual(['certificate', true])
    const shown = new X509Certificate(moved.certificate)
    expect([shown.checkIP('192.168.7.3'), shown.checkHost('shop.example'), shown.checkIP('192.168.1.20')]).toEqual(['192.168.7.3', 'shop.example', undefined])
    expect(await namesVouchedFor(folder, ['10.0.0.1', 'shop.example', 'other.example', '203.0.113.9'])).toEqual(['10.0.0.1', 'shop.example'])
    expect((await renewCertificate(folder, ['other.example'], nowMs)).fingerprint).not.toBe(first.fingerprint)
  })

  it('keeps its keys for the user alone, and makes a pair anew that does not belong together', async () => {
    const first = await renewCertificate(folder, names, nowMs), key = join(folder, 'certificate', 'server-key.pem')
    expect(statSync(key).mode & 0o777).toBe(0o600)
    expect(statSync(join(folder, 'certificate', 'authority-key.pem')).mode & 0o777).toBe(0o600)
    writeFileSync(key, readFileSync(join(folder, 'certificate', 'authority-key.pem')))
    const again = await renewCertificate(folder, names, nowMs)
    expect([again.made, again.fingerprint === first.fingerprint]).toEqual(['certificate', true])
  })
})

it.each([
  ['10.255.0.1', true], ['172.31.0.1', true], ['172.32.0.1', false], ['192.168.0.1', true], ['8.8.8.8', false], ['fd12::1', true], ['2001:db8::1', false],
  ['shop-pc.local', true], ['local', true], ['notlocal', false], ['localhost', true], ['shop.home.arpa', true], ['shop.example', false],
])('%s can be of a private network alone: %s', (name, expected) => {
  // RFC 1918, 3 (the three blocks); RFC 4193, 3.1; RFC 6762, 3; RFC 8375, 4.
  expect(isPrivate(name)).toBe(expected)
})
