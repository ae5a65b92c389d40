import type { Page } from '@playwright/test'
import { readPdf } from './pdf.ts'
import { expect, expectAccessible, test } from './shop.ts'
import type { ShopProcess } from './shop-process.ts'

/** Two bars of the demo shop, compared on the plate against a block of 25 with an invented, overdue indicator. */
const bars = { first: '', second: '' }
const by = { person: 'KM', device: 'tablet-1', atIso: '2026-03-14T09:00:00.000Z' }
const form = {
  method: 'compare', unit: 'mm', stations: 3, places: ['', '', ''], lines: 1, repeats: 2, instrumentId: 'ind', plateId: 'plate', blocksId: 'blocks',
  zeroOn: 'block', zero: '25', zeroBar: null, closing: '', temperature: '', asFound: false, replaces: null, note: '',
}

async function send(page: Page, shop: ShopProcess, body: object): Promise<void> {
  const answer = await page.request.post(`${shop.url}/api/deeds`, { data: { changes: [], checks: [], events: [], ...body }, headers: { origin: shop.url } })
  expect(answer.ok(), await answer.text()).toBe(true)
}

let made = 0
const change = (kind: string, record: string, fields: { readonly [field: string]: unknown }) =>
  ({ id: `print-${made += 1}`, kind, record, ...by, fields: Object.fromEntries(Object.entries(fields).map(([field, value]) => [field, { value, saw: [] }])) })

const reading = (bar: string, station: number, um: number) => ({ bar, station, xMm: [5, 62.5, 120][station], line: 0, face: 'A', text: `+${um}`, heightMm: 25 + um / 1000 })
const readWith = {
  method: 'compare', resolutionUm: 1, limitUm: null, repeatabilityUm: 0.3, plateFlatnessUm: 3, blockLimitUm: 0.3, blockUUm: null, betweenC: 0.5, awayC: 0.5, expansionPerC: 11.5e-6, expansionApartPerC: 1e-6,
}
const check = (id: string, replaces: string | null, ums: readonly (readonly number[])[]) => ({
  id, method: 'compare', replaces, ...by, note: '', asFound: false, looks: [], closing: { text: '0', um: 0 }, temperature: { text: '20,5', c: 20.5 },
  zero: { on: 'block', heightMm: 25, text: '25' },
  took: {
    instrument: { id: 'ind', name: 'Lever indicator (invented)', dueOn: '2026-01-31' }, plate: { id: 'plate', name: 'Granite plate (invented)', dueOn: null }, blocks: { id: 'blocks', name: 'Block box (invented)', dueOn: '2027-01-31' }, readWith,
  },
  readings: ums.flatMap((own, at) => own.map((um, station) => reading(at === 0 ? bars.first : bars.second, station, um))),
})

test.beforeEach(async ({ page, shop }) => {
  const known = await (await page.request.get(`${shop.url}/api/shop`)).json() as { bars: readonly { id: string; matesId: string | null }[] }
  const mates = known.bars.find(({ matesId }) => matesId !== null)!.matesId, pair = known.bars.filter(({ matesId }) => matesId === mates)
  Object.assign(bars, { first: pair[0]!.id, second: pair[1]!.id })
  const draftBars = [bars.first, bars.second].map((bar) => ({ bar, isNew: false, name: '', thickness: '', length: '' }))
  await send(page, shop, {
    changes: [
      change('instrument', 'ind', { name: 'Lever indicator (invented)', figures: { is: 'indicator', resolutionUm: 1, limitUm: null, repeatabilityUm: 0.3 }, dueOn: '2026-01-31', retired: false, note: '' }),
      change('instrument', 'plate', { name: 'Granite plate (invented)', figures: { is: 'plate', lengthMm: 630, widthMm: 400, grade: null, flatnessUm: 3 }, dueOn: null, retired: false, note: '' }),
      change('instrument', 'blocks', { name: 'Block box (invented)', figures: { is: 'gauge blocks', grade: null, limitUm: 0.3, uUm: null }, dueOn: '2027-01-31', retired: false, note: '' }),
      change('draft', 'DRAFT23456789', { form: { ...form, bars: draftBars }, typed: {}, looks: {}, state: 'open', checkId: null }),
    ],
    checks: [check('CHECK23456789', null, [[3, 4, 2], [6, 5, 4]]), check('CHECK3456789A', 'CHECK23456789', [[3, 4, 2], [6, 5, 5]])],
  })
})

/** Without spaces and breaks: a line is painted in pieces where its signs come from two files of the face. */
const plain = (text: string): string => text.replace(/[\s·]/g, '')

/** Sizes of paper in points. @source ISO-216 (A4); Letter is 8 1/2 × 11 in */
const papers = { A4: [595, 842], Letter: [612, 792] } as const

for (const paper of ['A4', 'Letter'] as const) {
  test.describe(paper, () => {
    test.beforeEach(async ({ page, shop }) => {
      const { shop: record } = await (await page.request.get(`${shop.url}/api/shop`)).json() as { shop: { id: string; saw: { paper?: readonly string[] } } }
      if (paper === 'Letter') await send(page, shop, { changes: [{ ...change('shop', record.id, {}), fields: { paper: { value: 'Letter', saw: record.saw.paper ?? [] } } }] })
    })

    test('the check sheet has its boxes in the order of entry, black only', async ({ page }) => {
      await page.goto('/inspect/check/DRAFT23456789/sheet')
      await expect(page.getByRole('region', { name: `Page, ${paper}` })).toHaveCount(1)
      const { pages, colours } = readPdf(await page.pdf({ preferCSSPageSize: true }))
      expect(pages).toHaveLength(1)
      expect([Math.round(pages[0]!.widthPt), Math.round(pages[0]!.heightPt)]).toEqual(papers[paper])
      for (const said of ['Check sheet', 'DRAFT234', 'Lever indicator (invented)', 'a block of 25', 'Gage blocks are never bars', 'magnetised', 'Zero at the end, µm']) expect(plain(pages[0]!.text)).toContain(plain(said))
      const numbers = pages[0]!.text.split('\n').map((line) => line.trim()).filter((line, at, all) => /^\d+$/.test(line) && /^\(\d\)$/.test(all[at + 1] ?? '')).map(Number)
      expect(numbers).toEqual(Array.from({ length: 12 }, (_, i) => i + 1))
      expect(colours.filter((colour) => !/^(0 0 0|1 1 1)$/.test(colour))).toEqual([])
    })

    test('the certificate says what was read, with what, and what it proves, black only', async ({ page }) => {
      await page.goto('/inspect/done/CHECK3456789A/certificate')
      await expect(page.getByRole('region', { name: `Page, ${paper}` }).first()).toBeVisible()
      const { pages, colours } = readPdf(await page.pdf({ preferCSSPageSize: true }))
      const said = pages.map(({ text }) => text).join('\n')
      expect(pages.map(({ widthPt, heightPt }) => [Math.round(widthPt), Math.round(heightPt)])).toEqual(pages.map(() => [...papers[paper]]))
      pages.forEach(({ text }, at) => expect(text).toContain(`${at + 1} / ${pages.length}`))
      // +3 +4 +2 and +6 +5 +5 against 25 by hand: means 3 and 5.333, worst as laid 3 (first and last station), turned 4 (2 against 6).
      for (const words of ['25.003 mm', 'Replaces check CHECK234', 'overdue since 31 Jan 2026', 'Mean difference', '2.3 µm', 'Worst difference 3 µm', 'Worst difference 4 µm', 'not proved', 'Uncertainty', 'Left out of the parallelism', 'Not computed', 'Signature']) expect(plain(said)).toContain(plain(words))
      expect(said).not.toMatch(/\b(safe|holds)\b/i)
      expect(colours.filter((colour) => !/^(0 0 0|1 1 1)$/.test(colour))).toEqual([])
    })
  })
}

test('a check that was replaced says so; a certificate that was printed is kept as it was told', async ({ page, shop }) => {
  await page.goto('/inspect/done/CHECK23456789/certificate')
  await expect(page.getByRole('region', { name: 'Page, A4' }).first()).toContainText('Replaced by check CHECK345')
  await expectAccessible(page)
  const told = page.waitForRequest((request) => request.url().endsWith('/api/told'))
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
  expect((await told).postDataJSON()).toMatchObject([{ what: 'certificate', checkId: 'CHECK23456789', setupId: null, data: { bars: [{}, {}] } }])
  await expect.poll(async () => (await page.request.get(`${shop.url}/api/history/bar/${bars.first}`)).text()).toContain('CHECK23456789')
})

test('a check sheet that was printed is kept as told about the half-done check', async ({ page, shop }) => {
  await page.goto('/inspect/check/DRAFT23456789/sheet')
  await expect(page.getByRole('region', { name: 'Page, A4' })).toBeVisible()
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
  await expect.poll(async () => await (await page.request.get(`${shop.url}/api/history/draft/DRAFT23456789`)).json() as object).toContainEqual(
    expect.objectContaining({ what: 'told', told: expect.objectContaining({ what: 'check sheet', checkId: null, data: expect.objectContaining({ draft: 'DRAFT23456789', bars: [expect.anything(), expect.anything()] }) }) }))
})

test('there is nothing to print of a check nobody made', async ({ page }) => {
  await page.goto('/inspect/done/none/certificate')
  await expect(page.getByRole('heading', { name: 'There is no such check' })).toBeVisible()
  await page.goto('/inspect/check/none/sheet')
  await expect(page.getByRole('heading', { name: 'There is no such half-done check' })).toBeVisible()
})
