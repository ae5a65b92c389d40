import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ShopProcess, startShop } from '../shop-process.ts'
import { twinrest } from './command.ts'

let shop: ShopProcess, scratch: string, code: string
beforeAll(async () => {
  shop = await startShop({ demo: true })
  scratch = mkdtempSync(join(tmpdir(), 'twinrest-rack-'))
  const { out } = await inShop('rack', 'find', 'measured', '--json')
  code = (JSON.parse(out) as { code: string; trust: string; where: { at: string } }[]).find(({ where, trust }) => where.at === 'slot' && trust === 'trusted')!.code
})
afterAll(async () => {
  await shop.clear()
  rmSync(scratch, { recursive: true })
})

const inShop = (...args: readonly string[]) => twinrest([...args, '--data', shop.dataFolder])

describe('twinrest rack, beside a running server', () => {
  it('finds bars by a range, a state and the text of a label', async () => {
    const { out: all } = await inShop('rack', 'list', '--json'), { out } = await inShop('rack', 'find', '10-30', '--json')
    const heights = (text: string) => (JSON.parse(text) as { heightMm: number }[]).map(({ heightMm }) => heightMm)
    expect(heights(out)).toEqual(heights(all).filter((mm) => mm >= 9.95 && mm <= 30.05))
    expect(heights(out).length).toBeGreaterThan(2)
    expect((JSON.parse((await inShop('rack', 'find', `TWB${code}`, '--json')).out) as { code: string }[]).map((one) => one.code)).toEqual([code])
  })

  it('signs out and back, and tells the life of the bar', async () => {
    expect(await inShop('rack', 'out', code, '--person', 'JO', '--due', '2026-01-02')).toMatchObject({ code: 0, out: expect.stringContaining('Signed out') })
    expect((await inShop('rack', 'out')).out).toMatch(new RegExp(`JO.*${code}.*back by 2026-01-02 +overdue`))
    expect(await inShop('rack', 'back', code, '--how', 'nicked')).toMatchObject({ code: 0, out: expect.stringContaining('Back, nicked') })
    const { out, err } = await inShop('rack', 'life', code)
    expect(out).toMatch(/Signed out: JO\.[^]*Back, nicked\./)
    expect(err).toContain('look first (nicked)')
    expect(await inShop('rack', 'out', code)).toMatchObject({ code: 2, err: expect.stringContaining('person') })
  })

  it('says what is missing and what a set would serve', async () => {
    expect((await inShop('rack', 'missing')).out).toMatch(/^\d+ of \d+ served/)
    expect((await inShop('rack', 'try', '10', '50', '5', '8', '150')).out).toMatch(/^Now \d+ of \d+ served, with the set \d+/)
    expect((await inShop('rack', 'ladder', '5', '8', '--vise', 'Mill 1, 125 mm', '--vises', '2', '--whole')).out).toMatch(/^\d+ bars, 4 of each height/)
    expect((await inShop('rack', 'regrind', code)).out).toMatch(/^New height \d+\.\d+/)
    const sheet = join(scratch, 'labels.svg')
    expect(await inShop('rack', 'labels', code, '--slots', '--svg', sheet)).toMatchObject({ code: 0 })
    expect(readFileSync(sheet, 'utf8')).toContain(code)
  })

  it('writes a whole rack and takes it in elsewhere, and its history as CSV', async () => {
    const file = join(scratch, 'rack.json'), history = join(scratch, 'history.csv'), other = mkdtempSync(join(scratch, 'other-'))
    expect(await inShop('rack', 'export', file, '--json')).toMatchObject({ code: 0 })
    expect(await inShop('rack', 'history', history)).toMatchObject({ code: 0 })
    expect(await twinrest(['rack', 'import', file, '--data', other])).toMatchObject({ code: 0, out: expect.stringMatching(/^In the rack: \d+ bars, with \d+ events/) })
    expect(await twinrest(['rack', 'history', history, '--in', '--data', other])).toMatchObject({ code: 0, out: expect.stringMatching(/^In the shop: 0 new/) })
    expect((await twinrest(['rack', 'history', '--data', other])).out).toBe(readFileSync(history, 'utf8'))
    writeFileSync(history, 'id,colour\n')
    expect(await twinrest(['rack', 'history', history, '--in', '--data', other])).toMatchObject({ code: 2, err: expect.stringContaining('colour') })
  })

  it('answers the same over HTTP', async () => {
    const ask = async (path: string, body?: unknown) => {
      const answer = await fetch(`${shop.url}${path}`, body === undefined ? {} : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })
      return { status: answer.status, body: await answer.json() as unknown }
    }
    expect(await ask('/api/rack/find', { text: code })).toMatchObject({ status: 200, body: [{ code }] })
    expect(await ask('/api/rack/out', { bars: [code], machine: 'Surface grinder' })).toMatchObject({ status: 200, body: { clashes: [] } })
    expect(await ask('/api/rack/out')).toMatchObject({ status: 200, body: expect.arrayContaining([expect.objectContaining({ where: expect.objectContaining({ to: 'machine', who: 'Surface grinder' }) })]) })
    expect(await ask('/api/rack/back', { bars: [code], how: 'fine' })).toMatchObject({ status: 200 })
    expect(await ask('/api/rack/missing', {})).toMatchObject({ status: 200, body: { setups: expect.any(Number) } })
    expect(await ask('/api/rack/try', { from: '10', to: '50', setStep: '5', setThickness: '8', setLength: '150' })).toMatchObject({ status: 200, body: { heightsMm: [10, 15, 20, 25, 30, 35, 40, 45, 50] } })
    expect(await ask('/api/rack/labels', { bars: [code] })).toMatchObject({ status: 200, body: [{ qr: `TWB${code}` }] })
    expect(await ask(`/api/rack/life/${code}`)).toMatchObject({ status: 200 })
    expect(await ask('/api/rack/out', { bars: [code], dueOn: 'soon', person: 'JO' })).toMatchObject({ status: 422 })
    const { body: file } = await ask('/api/rack/export.json')
    expect(await ask('/api/rack/import.json', { file, dryRun: true })).toMatchObject({ status: 200, body: { dryRun: true } })
  })
})
