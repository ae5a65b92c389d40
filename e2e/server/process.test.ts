import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ShopProcess, startShop } from '../shop-process.ts'

const main = resolve(import.meta.dirname, '../../dist/node/main.js')
let shop: ShopProcess, scratch: string
beforeAll(async () => {
  shop = await startShop({ demo: true })
  scratch = mkdtempSync(join(tmpdir(), 'twinrest-server-'))
})
afterAll(async () => {
  await shop.clear()
  rmSync(scratch, { recursive: true })
})

type Ended = { readonly code: number | null; readonly out: string; readonly err: string }

/** Starts a server and, once `when` is on its standard output, does something with it; resolves at its end. */
function started(args: readonly string[], when: RegExp | null = null, then: (pid: number, out: string) => void = () => {}): Promise<Ended> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [main, ...args])
    let out = '', err = '', told = false
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text
      if (when && !told && when.test(out)) { told = true; then(child.pid!, out) }
    })
    child.stderr.setEncoding('utf8').on('data', (text: string) => { err += text })
    child.on('close', (code) => done({ code, out, err }))
  })
}

describe('the server as a process', () => {
  it('says its address in one line, and what to do first where the shop is empty', async () => {
    const empty = await started(['--port', '0', '--data', join(scratch, 'empty')], /first|empty/, (pid) => process.kill(pid, 'SIGTERM'))
    expect(empty).toMatchObject({ code: 0, err: '' })
    expect(empty.out).toMatch(/^Twinrest: http:\/\/127\.0\.0\.1:\d+\nThis shop is empty: .*\n$/)
    const full = await started(['--port', '0', '--data', shop.dataFolder], /Twinrest: http:\S+\n/, (pid) => process.kill(pid, 'SIGINT'))
    expect(full).toMatchObject({ code: 0, err: '' })
    expect(full.out.trim().split('\n')).toHaveLength(1)
  })

  it('starts a demo shop again as it was left, and refuses to put a demo into any other', async () => {
    const again = await started(['--port', '0', '--data', shop.dataFolder, '--demo'], /Twinrest: http:\S+\n/, (pid) => process.kill(pid, 'SIGTERM'))
    expect(again).toMatchObject({ code: 0, err: '' })
    const own = join(scratch, 'own')
    await started(['--port', '0', '--data', own], /empty/, (pid) => process.kill(pid, 'SIGTERM'))
    await new Promise((done) => {
      spawn(process.execPath, [resolve(main, '../twinrest.js'), 'rack', 'add', '--height', '35', '--thickness', '8', '--length', '150', '--data', own]).on('close', done)
    })
    expect(await started(['--port', '0', '--data', own, '--demo'])).toEqual({ code: 2, out: '', err: 'The demo shop is only for an empty shop: this one holds records already.\n' })
  })

  it.each([
    [['--port', 'eighty'], "Port: 'eighty' is no port"], [['--colour'], "'--colour' is not an option here"], [['--data', join(main, 'inside')], 'cannot be made or written'],
  ])('%j ends at once with a sentence and exit code 2', async (args, said) => {
    const { code, out, err } = await started(args)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain(said)
    expect(err.trim().split('\n')).toHaveLength(1)
  })

  it('says that a port is taken, and that a file is no database of ours', async () => {
    const port = new URL(shop.url).port
    expect(await started(['--port', port, '--data', join(scratch, 'other')])).toEqual({ code: 2, out: '', err: `Port ${port} is taken by another program; stop it, or give another with --port.\n` })
    const broken = mkdtempSync(join(scratch, 'broken-'))
    writeFileSync(join(broken, 'shop.sqlite'), 'no database at all, but a long enough text to look at')
    expect(await started(['--port', '0', '--data', broken])).toMatchObject({ code: 2, err: expect.stringContaining('is damaged') as string })
  })

  it('answers a request in flight before it stops, with an idle connection open', async () => {
    const csv = `height,thickness,length\n${'35,8,150\n'.repeat(3000)}`
    const body = JSON.stringify({ id: 'file-1', csv, unit: 'mm' })
    let answered: Promise<number> | undefined, idle: ReturnType<typeof connect> | undefined
    const ended = await started(['--port', '0', '--data', join(scratch, 'flight')], /Twinrest: http:\S+\n/, (pid, out) => {
      const url = new URL(/http:\S+/.exec(out)![0])
      idle = connect(Number(url.port), url.hostname).on('error', () => { /* the server closes it */ })
      answered = new Promise((done, failed) => {
        const sent = request(`${url.origin}/api/rack/import`, { method: 'POST', headers: { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) } }, (answer) => {
          answer.resume().on('end', () => done(answer.statusCode!))
        }).on('error', failed)
        sent.end(body, () => { setTimeout(() => process.kill(pid, 'SIGTERM'), 50) })
      })
    })
    expect(await answered).toBe(200)
    expect(ended).toMatchObject({ code: 0, err: '' })
    idle?.destroy()
  })

  it('listens on this machine alone and sends its headers with every answer', async () => {
    for (const path of ['/', '/api/health', '/nowhere']) {
      const { headers } = await fetch(`${shop.url}${path}`)
      const policy = headers.get('content-security-policy') ?? ''
      expect(policy).toContain("default-src 'self'")
      expect(policy).toMatch(/script-src 'self' 'wasm-unsafe-eval'(;|$)/)
      expect(policy).toContain("frame-ancestors 'none'")
      expect([headers.get('x-content-type-options'), headers.get('referrer-policy')]).toEqual(['nosniff', 'no-referrer'])
    }
  })

  it('turns a large body away by its length alone, and one of no stated length', async () => {
    const send = (headers: { readonly [name: string]: string | number }) => new Promise<number>((done, failed) => {
      const sent = request(`${shop.url}/api/changes`, { method: 'POST', headers: { 'content-type': 'application/json', ...headers } }, (answer) => { done(answer.statusCode!); answer.resume(); sent.destroy() })
      sent.on('error', (error) => { if (!sent.destroyed) failed(error) }).write('[')
    })
    expect(await send({ 'content-length': 10 * 1024 * 1024 })).toBe(413)
    expect(await send({ 'transfer-encoding': 'chunked' })).toBe(411)
  })

  it('lets no raw path out of the app', async () => {
    const raw = (path: string) => new Promise<number>((done, failed) => {
      request({ host: '127.0.0.1', port: Number(new URL(shop.url).port), path, method: 'GET' }, (answer) => { answer.resume(); done(answer.statusCode!) }).on('error', failed).end()
    })
    for (const path of ['/../package.json', '/assets/../../node/main.js', '/..%2fpackage.json', '//etc/passwd', '/assets/%00']) expect(await raw(path), path).toBeGreaterThanOrEqual(400)
  })
})
