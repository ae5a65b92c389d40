import type { Page } from '@playwright/test'
import { expect, expectAccessible, test } from './shop.ts'
import type { ShopProcess } from './shop-process.ts'

test.use({ demo: false })

const by = { person: 'KM', device: 'bench', atIso: '2026-03-02T08:00:00.000Z' }
let made = 0
const newId = () => `missing${(made += 1)}`
const first = (kind: string, record: string, fields: object) => ({ id: newId(), kind, record, ...by, fields: Object.fromEntries(Object.entries(fields).map(([field, value]) => [field, { value, saw: [] }])) })
const letters = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ'
const code = () => Array.from({ length: 8 }, (_, at) => letters[Math.floor((made += 1) / 32 ** (7 - at)) % 32]).join('')

/** Windows of a worked case: which heights serve how many is counted by hand. Each with a part that asks for just it in jaws of 45: low = 46 + off the top − height, high = 45 − grip. */
const windows = [[31, 32.4], [32, 33], [31.8, 34], [38, 39.6], [37.5, 39.6], [41, 41.4], [36, 38.4]] as const

/** A part faced by 1 in jaws 45 high, 1 clear of them, which a seat from `low` to `high` serves: high by what grip is left. */
const formOf = ([low, high]: readonly [number, number]) => ({
  unit: 'mm', shape: 'block', height: String(Math.round((45 + 1 + 1 - low) * 100) / 100), offTop: '1', proud: '', between: '60', along: '80', cuts: [], hollows: [], use: 'milling',
  wishes: { grip: String(Math.round((45 - high) * 100) / 100), air: '1', holeAir: '', bedAir: '', gap: '', tolerance: '' },
})

/** One vise, pairs of 10 to 50 in steps of 5, a setup for each window. */
async function seed(page: Page, shop: ShopProcess): Promise<void> {
  const heights = [10, 15, 20, 25, 30, 35, 40, 45, 50]
  const bars = heights.flatMap((mm) => ['a', 'b'].map((side) => ({ id: `${mm}${side}`, mm })))
  const body = {
    changes: [
      first('vise', 'vise', { name: 'Mill', jawWidthMm: 125, openingMm: 100, fittedJawSetId: 'hard', retired: false, note: '', measured: null, jawSets: [{ id: 'hard', name: 'hard', fixedHeightMm: 45, movingHeightMm: 45, stepHeightMm: null, face: 'smooth' }] }),
      ...heights.map((mm) => first('mates', `m${mm}`, { name: `P${mm}`, note: '' })),
      ...bars.map(({ id, mm }) => first('bar', id, { code: code(), name: id, thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 120, matesId: `m${mm}`, slotId: null, where: { at: 'slot' }, note: '' })),
      ...windows.map((window, k) => first('setup', `setup${k}`, { title: `Block ${k + 1}`, operation: '', viseId: 'vise', partId: null, form: formOf(window), bars: [], stand: 'on edge', usedAtIso: by.atIso, retired: false })),
    ],
    checks: [{ id: newId(), ...by, method: 'stated', replaces: null, zero: null, closing: null, temperature: null, took: null, looks: [], asFound: false, note: '', readings: bars.map(({ id, mm }) => ({ bar: id, station: 0, xMm: null, line: 0, face: 'A', text: String(mm), heightMm: mm })) }],
    events: bars.map(({ id }) => ({ id: newId(), bar: id, kind: 'looked over', undoes: null, note: '', ...by })),
  }
  const answer = await page.request.post(`${shop.url}/api/deeds`, { data: body, headers: { origin: shop.url } })
  expect(answer.ok(), await answer.text()).toBe(true)
}

test('seven windows that a set in steps of five misses: two heights close six of them', async ({ page, shop }) => {
  await seed(page, shop)
  await page.goto('/rack')
  await page.getByRole('link', { name: 'What is missing' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('0 of 7 setups served')
  const next = page.getByRole('region', { name: 'To make or buy next' })
  await expect(next.locator('.next-one').nth(1)).toContainText('6 setups more: 6 of 7')
  const two = (await next.locator('.next-one').nth(1).locator('strong').first().textContent())!.split(' and ').map(Number)
  expect(two[0]).toBeGreaterThanOrEqual(32); expect(two[0]).toBeLessThanOrEqual(32.4)
  expect(two[1]).toBeGreaterThanOrEqual(38); expect(two[1]).toBeLessThanOrEqual(38.4)
  await expect(next.locator('.next-one').nth(1)).toContainText('any from 32 to 32.4 and any from 38 to 38.4')
  await expectAccessible(page)

  await page.getByText('Show the sum').click()
  await expect(page.getByText('Share of the setups that is served')).toBeVisible()
})

test('a set is tried before it is bought, and what cannot be read is said at its field', async ({ page, shop }) => {
  await seed(page, shop)
  await page.goto('/rack/missing')
  const set = page.locator('.try-set')
  await set.getByRole('button', { name: 'Try it' }).click()
  await expect(set.getByLabel(/^from/)).toHaveAccessibleDescription(/nothing given/)
  for (const [label, text] of [['from', '32'], ['to', '50'], ['step', '6'], ['thickness', '8'], ['length', '150']] as const) await set.getByLabel(new RegExp(`^${label}`)).fill(text)
  await set.getByRole('button', { name: 'Try it' }).click()
  await expect(set).toContainText('6 of 7 served with it')
  await expect(set).toContainText('Mill: 50 stand as high as the jaws or above them')
  await expect(set).toContainText('the bars are longer than the jaws are wide')
  await expect(set).toContainText('2 of its heights serve nothing that is counted: 44, 50')
  await set.getByLabel(/^to/).fill('20')
  await set.getByRole('button', { name: 'Try it' }).click()
  await expect(set.getByRole('alert')).toBeVisible()
})

test('the pairs to make are carried over into an order, with how far each may be moved', async ({ page, shop }) => {
  await seed(page, shop)
  await page.goto('/rack/missing')
  await page.getByRole('button', { name: 'Make these 2 pairs' }).click()
  await expect(page).toHaveURL(/\/make\/order\//)
  await expect(page.getByLabel(/^heights/)).toHaveValue('32 38')
  const { jobs } = await (await page.request.get(`${shop.url}/api/shop`)).json() as { readonly jobs: readonly { readonly note: string }[] }
  expect(jobs.map(({ note }) => note)).toEqual(['As good: any from 32 to 32.4 and any from 38 to 38.4.'])
})

test('a shop with little of its own is counted with a typical mix, and that is said', async ({ page, shop }) => {
  await seed(page, shop)
  const answer = await page.request.post(`${shop.url}/api/deeds`, { headers: { origin: shop.url }, data: { checks: [], events: [], changes: [first('vise', 'little', { name: 'Little', jawWidthMm: 60, openingMm: 60, fittedJawSetId: 'j', retired: false, note: '', measured: null, jawSets: [{ id: 'j', name: 'soft', fixedHeightMm: 24, movingHeightMm: 24, stepHeightMm: null, face: 'smooth' }] })] } })
  expect(answer.ok(), await answer.text()).toBe(true)
  await page.goto('/rack/missing')
  await page.getByRole('combobox', { name: /vise/i }).selectOption({ label: 'Little' })
  await expect(page.getByText(/typical parts, since there are few of your own yet/)).toBeVisible()
  // Nothing holds a block of 8 faced by 1 in jaws of 24 higher than 18, and bars of that height there are none: some of it is work for other jaws or bars.
  await expect(page.getByRole('region', { name: 'Not served' })).toBeVisible()
})
