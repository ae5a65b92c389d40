import { mkdtempSync, rmSync } from 'node:fs'
import type { RequestListener } from 'node:http'
import { request } from 'node:http'
import { request as secureRequest } from 'node:https'
import { type AddressInfo, connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { connect as secureConnect } from 'node:tls'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { type OnePort, onePort } from '#server/one-port.ts'
import { renewCertificate, type ShopCertificate } from '#tasks/access/certificate/shop-certificate.ts'

const quick = { headersTimeout: 150, requestTimeout: 300, connectionsCheckingInterval: 20, keepAliveTimeout: 5_000 }
const saying = (text: string): RequestListener => (incoming, response) => { incoming.resume().once('end', () => response.end(text)) }

let folder: string, shop: ShopCertificate, opened: OnePort
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'twinrest-port-'))
  shop = await renewCertificate(folder, ['localhost', '127.0.0.1'], Date.now())
})
afterAll(() => rmSync(folder, { recursive: true }))
afterEach(async () => {
  await new Promise((done) => { opened.front.close(done); opened.closeAll() })
})

async function open(secure: boolean): Promise<number> {
  opened = onePort(saying('plain'), secure ? { listener: saying('secure'), shown: { cert: shop.certificate, key: shop.key } } : null, quick)
  await new Promise<void>((done) => { opened.front.listen(0, '127.0.0.1', done) })
  return (opened.front.address() as AddressInfo).port
}

const plainly = (port: number) => new Promise<string>((done, failed) => {
  request({ port, host: '127.0.0.1', agent: false }, (answer) => answer.setEncoding('utf8').on('data', done)).on('error', failed).end()
})
const securely = (port: number, ca?: string) => new Promise<string>((done) => {
  secureRequest({ port, host: '127.0.0.1', agent: false, ...(ca === undefined ? {} : { ca }) }, (answer) => answer.setEncoding('utf8').on('data', done)).on('error', (error: NodeJS.ErrnoException) => done(error.code!)).end()
})

/** Sends a piece and waits: what came back by the time the other side hung up, and how long that took. */
const hungUp = (port: number, piece: string, secure: boolean) => new Promise<{ readonly back: string; readonly ms: number }>((done) => {
  const began = performance.now(), socket = secure ? secureConnect({ port, host: '127.0.0.1', ca: shop.authority }) : connect(port, '127.0.0.1')
  let back = ''
  socket.on('error', () => { /* a reset is a way to hang up */ }).on('data', (text: Buffer) => { back += text.toString('latin1') }).on('close', () => done({ back, ms: performance.now() - began }))
  if (piece !== '') socket.write(piece)
})

describe('one port', () => {
  it('answers https to whoever trusts the authority, plain http beside it, and nothing to the rest', async () => {
    const port = await open(true)
    expect(await Promise.all([plainly(port), securely(port, shop.authority), securely(port)])).toEqual(['plain', 'secure', expect.stringMatching(/UNABLE_TO_VERIFY|SELF_SIGNED/)])
  })

  it('shows a new certificate to the next connection, without being started again', async () => {
    const port = await open(true), other = await renewCertificate(folder, ['127.0.0.1', 'localhost'], Date.now(), { newAuthority: true })
    opened.show!({ cert: other.certificate, key: other.key })
    expect([await securely(port, other.authority), await securely(port, shop.authority)]).toEqual(['secure', expect.stringMatching(/UNABLE_TO_VERIFY|SELF_SIGNED|SIGNATURE/)])
    shop = other
  })

  it('does not speak what is older than TLS 1.2', async () => {
    const port = await open(true)
    const code = await new Promise((done) => {
      secureConnect({ port, host: '127.0.0.1', ca: shop.authority, minVersion: 'TLSv1', maxVersion: 'TLSv1.1', ciphers: 'ALL@SECLEVEL=0' }, () => done('spoken')).on('error', (error: NodeJS.ErrnoException) => done(error.code))
    })
    expect(code).toMatch(/PROTOCOL_VERSION|ALERT/)
  })

  it('closes at once when nobody asks anything, with silent and idle connections open', async () => {
    const port = await open(true), silent = connect(port, '127.0.0.1')
    await new Promise((done) => { silent.once('connect', done) })
    await securely(port, shop.authority)
    const began = performance.now()
    await new Promise((done) => { opened.front.close(done); opened.closeIdle() })
    expect(performance.now() - began).toBeLessThan(140)
  })
})

describe.each([false, true])('a slow caller (https: %s)', (secure) => {
  const head = 'POST /api/changes HTTP/1.1\r\nHost: localhost\r\nContent-Length: 20\r\nContent-Type: application/json\r\n'
  it.each([
    ['half a head', head],
    ['half a body', `${head}\r\n[{"id"`],
    ['nothing', ''],
  ])('that sends %s is cut off, and others go on meanwhile', async (_what, piece) => {
    const port = await open(secure), cut = hungUp(port, piece, secure)
    expect(secure ? await securely(port, shop.authority) : await plainly(port)).toBe(secure ? 'secure' : 'plain')
    const { back, ms } = await cut
    expect(ms).toBeLessThan(3000)
    if (piece !== '') expect(back).toMatch(/^HTTP\/1\.1 408 /)
  })
})
