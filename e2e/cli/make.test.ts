import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ShopProcess, startShop } from '../shop-process.ts'
import { twinrest } from './command.ts'

let shop: ShopProcess
beforeAll(async () => { shop = await startShop({ demo: true }) })
afterAll(async () => { await shop.clear() })

const inShop = (...args: readonly string[]) => twinrest([...args, '--data', shop.dataFolder])
const asked = async (path: string, body?: object) => {
  const answer = await fetch(`${shop.url}${path}`, body ? { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) } : {})
  return { status: answer.status, data: await answer.json() as { readonly [key: string]: unknown } }
}

describe('twinrest make, beside a running server', () => {
  it('lays the ways to a ladder side by side, keeps one as a job, and cuts its stock', async () => {
    const { code, out, err } = await inShop('make', 'routes', '--ladder', '12-44', '--step', '2', '--thickness', '4', '--pairs', '2', '--jaw-width', '125', '--take', 'milled', '--name', 'Ladder')
    expect(code, err).toBe(0)
    // 17 heights of four, one under the jaws
    for (const said of ['68 bars', '17 heights', '124 long', 'milled soft in pairs', 'Expected: common practice, no source.']) expect(out).toContain(said)
    const id = /Kept as job (\S+)\./.exec(err)![1]!
    expect((await inShop('make', 'jobs')).out).toContain(id)
    const cuts = JSON.parse((await inShop('make', 'cuts', 'Ladder', '--json')).out) as { plates: { status: string; bound: number; leastPlateLength: number; plan: [number, [number, number, number][]][] }[] }
    expect(cuts.plates.flatMap(({ plan }) => plan.flatMap(([, pieces]) => pieces.map(([, , count]) => count))).reduce((sum, count) => sum + count, 0)).toBe(68)
    for (const { bound, leastPlateLength } of cuts.plates) expect(leastPlateLength).toBeGreaterThanOrEqual(bound - 1e-6)
    expect((await inShop('make', 'cuts', id)).out).toContain('cannot do')
  })

  it('tells a job step by step, with what was read and what is enough', async () => {
    const { out } = await inShop('make', 'job', 'Pair of 30 for the grinder')
    expect(out.replaceAll(/\s+/g, ' ')).toContain('30 A1, edges: a bow of 0.12 asks for 0.22 on each side, there are 0.325: enough.')
    expect(out).toContain('▸ 10 Straighten')
    expect((await asked('/api/make/jobs/demo-job-1')).data).toMatchObject({ view: { plan: { next: 'straighten' } } })
  })

  it('keeps the regrinding of bars of the rack as a job, once', async () => {
    const bars = JSON.parse((await inShop('rack', 'list', '--json')).out) as { code: string; standing: string; mates: string | null; where: { at: string } }[]
    const [one, other] = bars.filter(({ standing, mates, where }) => standing === 'measured' && mates !== null && where.at === 'slot').map(({ code }) => code)
    const { code, out, err } = await inShop('make', 'regrind', one!, '--both-faces', '--use', 'grinding', '--name', 'Worn')
    expect(code, err).toBe(0)
    expect(out).toMatch(/^Kept as job \S+\. /)
    expect((await inShop('make', 'job', 'Worn')).out).toContain('▸ 1 Clean and demagnetise')
    expect(await inShop('make', 'regrind', one!)).toMatchObject({ code: 2, err: expect.stringContaining('Worn') as string })
    expect(await asked('/api/make/regrinds', { bars: [other], use: 'milling', person: 'KM' })).toMatchObject({ status: 200, data: { id: expect.any(String) as string } })
  })

  it('refuses in words what it cannot make', async () => {
    const bare = ['--thickness', '10', '--length', '150']
    expect(await inShop('make', 'routes', ...bare)).toMatchObject({ code: 2, err: expect.stringContaining('--ladder') as string })
    expect(await inShop('make', 'routes', ...bare, '--heights', '30', '--take', 'bought')).toMatchObject({ code: 2, err: expect.stringContaining('cannot be gone') as string })
    expect((await inShop('make', 'job', 'nothing of the kind')).code).toBe(2)
    expect((await asked('/api/make/jobs/nothing')).status).toBe(422)
  })

  it('answers the same over HTTP, and keeps a job that is begun there', async () => {
    const form = {
      unit: 'mm', heightsBy: 'list', heights: '30', from: '', to: '', step: '', jawHeight: '', below: '0.5', lowest: '5', thickness: '10', lengthBy: 'length', length: '150', jawWidth: '', under: '1', pairs: '1', vises: '1', use: 'fine milling', hrc: '60', due: null, faces: false,
      offer: { cost: '', days: '', match: '', parallel: '' },
    }
    expect((await asked('/api/make/routes', form)).data).toMatchObject({ answer: { order: { bars: 2 }, best: 'ground' } })
    expect((await asked('/api/make/routes', { ...form, thickness: 'thick' }))).toMatchObject({ status: 422, data: { facts: { field: 'thickness' } } })
    const begun = await asked('/api/make/jobs', { form, route: 'ground', name: 'By HTTP', person: 'KM' })
    expect((await asked(`/api/make/jobs/${String(begun.data['id'])}/cuts`)).data).toMatchObject({ plates: [{ status: 'optimal' }] })
  })
})
