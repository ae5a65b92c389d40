import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ShopProcess, startShop } from '../shop-process.ts'

let shop: ShopProcess
beforeAll(async () => { shop = await startShop({ demo: true }) })
afterAll(() => shop.clear())

const get = (path: string) => fetch(`${shop.url}${path}`)
const post = (path: string, body: object) => fetch(`${shop.url}${path}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })
const readings = ['+3', '+4', '+2'].map((reading) => ({ bar: 'demo-R-1', reading })).concat(['+6', '+5', '+4'].map((reading) => ({ bar: 'demo-R-2', reading })))

describe('/api/inspect', () => {
  it('records a check and answers it with what it says', async () => {
    const recorded = await (await post('/api/inspect/record', { method: 'compare', readings, zero: '25,000', instrument: 'demo-lever-1', person: 'KM' })).json() as { check: { id: string }; checked: { pair: object }; asks: [] }
    expect(recorded.asks).toEqual([])
    // Own arithmetic.
    expect(recorded.checked.pair).toMatchObject({ worstAsLaidUm: 3, worstTurnedUm: 4, betterWay: 'as laid' })
    const answered = await (await get(`/api/inspect/checks/${recorded.check.id}`)).json() as object
    expect(answered).toMatchObject({ check: recorded.check, checked: recorded.checked, replacedBy: null })
  })

  it('lets checks out and in, and refuses a file that says something else of one', async () => {
    const file = await (await get('/api/inspect/export.json')).json() as { checks: { id: string; note: string }[] }
    const csv = await (await get('/api/inspect/export.csv')).text()
    for (const body of [{ file }, { csv }]) expect(await (await post('/api/inspect/import', body)).json()).toMatchObject({ dryRun: false, checks: file.checks.length, known: file.checks.length })
    file.checks[0]!.note = 'another'
    const clash = await post('/api/inspect/import', { file })
    expect(clash.status).toBe(422)
    expect(await clash.json()).toMatchObject({ refused: 'id-used-twice' })
    const broken = await post('/api/inspect/import', { csv: csv.replace('what,', 'which,') })
    expect([broken.status, await broken.json()]).toMatchObject([422, { refused: 'csv-not-imported', facts: { complaints: expect.arrayContaining([expect.objectContaining({ line: 1, code: 'column-missing', needed: 'what' })]) } }])
  })

  it('proposes mates', async () => {
    const found = await (await post('/api/inspect/mates', { withinUm: 3, bars: ['demo-Q-1', 'demo-Q-2', 'demo-Q-3', 'demo-Q-4'] })).json() as { groups: { worstUm: number }[] }
    // By hand, from 0 1 0 · 1 1 2 · 0 0 1 · 2 1 1: the second and the last are alike turned end for end, the others differ by 1.
    expect(found.groups.map(({ worstUm }) => worstUm)).toEqual([0, 1])
  })

  it.each([
    ['/api/inspect/record', { method: 'compare', readings: [], zero: '25' }, 'value-not-allowed'], ['/api/inspect/record', { method: 'guess', readings }, 'unknown-word'],
    ['/api/inspect/record', { method: 'compare', readings }, 'field-missing'], ['/api/inspect/mates', {}, 'field-missing'], ['/api/inspect/import', {}, 'field-missing'],
    ['/api/inspect/mates', { vises: 0 }, 'size-not-positive'],
  ])('%s %j is refused: %s', async (path, body, code) => {
    const answer = await post(path, body)
    expect([answer.status, await answer.json()]).toMatchObject([422, { refused: code }])
  })

  it('knows no check that is not there', async () => expect(await (await get('/api/inspect/checks/none')).json()).toMatchObject({ refused: 'check-not-known' }))

  it('is described', async () => {
    const { paths } = await (await get('/api/openapi.json')).json() as { paths: object }
    for (const path of ['/api/inspect/record', '/api/inspect/checks/{id}', '/api/inspect/mates', '/api/inspect/export.csv', '/api/inspect/export.json', '/api/inspect/import']) expect(paths).toHaveProperty([path])
  })
})
