import type { APIRequestContext, Browser, BrowserContext, Page } from '@playwright/test'
import { expect, expectAccessible, test } from './shop.ts'

/** Invented instruments: a fine indicator, a usual one, a plate, blocks. Figures as a shop would type them. */
const instruments = {
  fine: { name: 'Indicator 0.1', figures: { is: 'indicator', resolutionUm: 0.1, limitUm: 0.2, repeatabilityUm: 0.1 } },
  usual: { name: 'Indicator 1', figures: { is: 'indicator', resolutionUm: 1, limitUm: 1, repeatabilityUm: 0.5 } },
  plate: { name: 'Plate', figures: { is: 'plate', lengthMm: 300, widthMm: 200, grade: null, flatnessUm: 0.5 } },
  blocks: { name: 'Blocks', figures: { is: 'gauge blocks', grade: null, limitUm: 0.1, uUm: null } },
} as const
const atIso = '2025-01-01T08:00:00.000Z'

async function told(request: APIRequestContext, kind: string, record: string, fields: object): Promise<void> {
  const change = { id: `c-${kind}-${record}`, kind, record, person: 'KM', device: 'plate', atIso, fields: Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, { value, saw: [] }])) }
  const answer = await request.post('/api/deeds', { data: { changes: [change], checks: [], events: [] } })
  expect(answer.ok(), await answer.text()).toBe(true)
}

/** Two bars of 25, A and B, 150 long, and what they are read with. */
async function shopWithBars(request: APIRequestContext, ...which: readonly (keyof typeof instruments)[]): Promise<void> {
  for (const [id, code] of [['A', 'ABCD2345'], ['B', 'EFGH6789']] as const) {
    await told(request, 'bar', id, { code, name: id, thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150, matesId: null, slotId: null, where: { at: 'slot' }, note: '' })
  }
  for (const id of which) await told(request, 'instrument', id, { ...instruments[id], dueOn: null, retired: false, note: '' })
  const reading = (bar: string) => ({ bar, station: 0, xMm: null, text: '25', heightMm: 25 })
  const check = { id: 'marked', method: 'stated', replaces: null, readings: [reading('A'), reading('B')], note: '', person: 'KM', device: 'plate', atIso }
  expect((await request.post('/api/deeds', { data: { changes: [], checks: [check], events: [] } })).ok()).toBe(true)
}

const cells = (page: Page) => page.getByRole('textbox', { name: /^(\d · )?µm , .*station/ })
const cell = (page: Page, bar: string, station: number) => page.getByRole('textbox', { name: new RegExp(`µm , 25 ${bar}, station ${station}$`) })
const zero = (page: Page) => page.getByRole('textbox', { name: /^zero, mm/ })
const closing = (page: Page) => page.getByRole('textbox', { name: /^zero again/ })
const answer = (page: Page) => page.getByRole('region', { name: 'Answer', exact: true })
const figure = (page: Page, name: string) => page.locator('.setup-figures div').filter({ hasText: name }).locator('dd')
const saved = (page: Page) => expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()

/** A check at the plate on both bars with so many stations, the hand in the field of the zero. */
async function beginCheck(page: Page, stations = 5, bars: readonly string[] = ['25 A', '25 B']): Promise<void> {
  await page.goto('/inspect')
  await page.getByRole('button', { name: /^Check at the plate/ }).click()
  for (const bar of bars) await page.getByRole('button', { name: new RegExp(bar) }).click()
  await page.getByRole('button', { name: /^stations/ }).click()
  await page.getByRole('radio', { name: String(stations), exact: true }).first().check({ force: true })
  await page.getByRole('button', { name: 'Done' }).click()
  await zero(page).focus()
}

async function give(page: Page, texts: readonly string[], delay = 0): Promise<void> {
  for (const text of texts) {
    await page.keyboard.type(text, { delay })
    await page.keyboard.press('Enter')
  }
}

const textsOf = async (page: Page) => await cells(page).evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value))

async function another(browser: Browser, url: string, initials: string): Promise<{ readonly context: BrowserContext; readonly page: Page }> {
  const context = await browser.newContext({ baseURL: url }), page = await context.newPage()
  await worksHere(page, initials)
  return { context, page }
}

async function worksHere(page: Page, initials: string): Promise<void> {
  await page.addInitScript((name) => {
    localStorage.setItem('twinrest-device', JSON.stringify({ id: `device-${name}`, person: { id: name, initials: name }, asked: true }))
  }, initials)
}

test.use({ demo: false })

test('a block of 25,000, +3 +4 +2 and +6 +5 +4: 25.003 and 25.005, 2 apart, 3 as laid, 4 turned', async ({ page, request }) => {
  await shopWithBars(request, 'fine', 'plate', 'blocks')
  await beginCheck(page, 3)
  await give(page, ['25,000', '20', '+3', '+4', '+2', '+6', '+5', '+4', '0'])
  // Worked by hand: means 3 and 5; differences 3, 1, 2; with the second turned 1, 1, 4.
  await expect(figure(page, 'mean difference')).toHaveText('2')
  await expect(figure(page, 'worst as laid')).toHaveText('3')
  await expect(figure(page, 'turned')).toHaveText('4')
  await expect(answer(page)).toContainText('Better as laid')
  await expect(page.getByRole('region', { name: '25 A', exact: true })).toContainText('25.003 ±')
  await expect(page.getByRole('region', { name: '25 B', exact: true })).toContainText('25.005 ±')
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(page).toHaveURL(/\/inspect\/done\//)
  await expect(figure(page, 'mean difference')).toHaveText('2')
  await page.getByText('Show the sum').click()
  await expect(page.locator('.sum-one').first()).toBeVisible()
  await saved(page)
  await expectAccessible(page)
})

test('mates 1 µm apart are fit for grinding where the instrument can prove it, and not proved where it cannot', async ({ page, request }) => {
  await shopWithBars(request, 'fine', 'usual', 'plate', 'blocks')
  await beginCheck(page, 3)
  const read = async (name: string) => {
    await page.getByRole('button', { name: /^read with/ }).click()
    await page.getByRole('combobox', { name: 'indicator' }).selectOption({ label: name })
    await page.getByRole('combobox', { name: 'plate' }).selectOption({ label: 'Plate' })
    await page.getByRole('button', { name: 'Done' }).click()
  }
  await read('Indicator 0.1')
  await zero(page).focus()
  await give(page, ['25', '20', '0', '0', '0', '+1', '+1', '+1', '0'])
  await expect(answer(page)).toContainText('Fit for grinding')
  await read('Indicator 1')
  await expect(answer(page)).not.toContainText('Fit for grinding')
  await expect(page.getByRole('list', { name: 'Uses' }).getByRole('listitem').filter({ hasText: 'grinding' })).toContainText('not proved')
  await expect(page.getByRole('list', { name: 'Look at again' })).toContainText('with this instrument')
})

// Common practice, no source: what a good mill holds over 150 mm.
test('a milled pair within 6 µm is fit for milling and drilling and not for grinding', async ({ page, request }) => {
  await shopWithBars(request, 'fine', 'plate', 'blocks')
  await beginCheck(page, 3)
  await give(page, ['25', '20', '0', '+3', '+6', '0', '+3', '+6', '0'])
  await expect(answer(page)).toContainText('Fit for milling')
  await expect(answer(page)).toContainText('Proved for drilling and milling. Out for fine milling and grinding.')
})

test('five stations on two bars, typed 30 ms between keys with comma and sign: nothing is lost, the zero comes last', async ({ page, request }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await beginCheck(page)
  const texts = ['+3', '-1,5', '+2', '0', '−4', '6', '+5,5', '+4', '-0.5', '+3 µm']
  await give(page, ['25,000', '21,5', ...texts], 30)
  await expect(closing(page)).toBeFocused()
  await give(page, ['-0,5'], 30)
  expect(await textsOf(page)).toEqual(texts)
  await expect(page.getByRole('button', { name: 'Keep this check' })).toBeFocused()
  await expect(page.getByRole('img', { name: /Profile/ })).toContainText('× the lengths')
  await saved(page)
  const { drafts } = await (await request.get('/api/shop')).json() as { drafts: { typed: object; form: { closing: string } }[] }
  expect(Object.values(drafts[0]!.typed)).toHaveLength(10)
  expect(drafts[0]!.form.closing).toBe('-0,5')
})

test('a gauge that types like a keyboard, 2 ms between keys, works as it is', async ({ page, request }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await beginCheck(page)
  await give(page, ['25', '20'])
  await expect(page.getByRole('region', { name: 'Answer' })).toContainText('A gage that types like a keyboard works as it is.')
  const texts = ['+3', '+4', '+2', '+3', '+3', '+6', '+5', '+4', '+5', '+6']
  await page.keyboard.type(`${texts.join('\n')}\n`, { delay: 2 })
  expect(await textsOf(page)).toEqual(texts)
  await expect(closing(page)).toBeFocused()
})

test('a number a line from a gauge on a serial line goes into the fields in turn', async ({ page, request }) => {
  await page.addInitScript(() => {
    const port = {
      opened: null as unknown, send: null as ((text: string) => void) | null, readable: null as ReadableStream<Uint8Array> | null,
      async open(how: unknown) {
        port.opened = how
        port.readable = new ReadableStream({ start(controller) { port.send = (text) => { controller.enqueue(new TextEncoder().encode(text)) } } })
      },
      async close() { port.readable = null },
    }
    Object.assign(globalThis, { gauge: port })
    Object.defineProperty(navigator, 'serial', { value: { requestPort: async () => port } })
  })
  type Gauge = { readonly opened: unknown; readonly send: (text: string) => void }
  const send = async (text: string) => { await page.evaluate((sent) => { (globalThis as unknown as { gauge: Gauge }).gauge.send(sent) }, text) }
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await beginCheck(page)
  await give(page, ['25'])
  await page.getByRole('button', { name: /^read with/ }).click()
  await page.getByText('How it talks').click()
  await page.getByLabel('baud', { exact: true }).selectOption('4800')
  await page.getByLabel('the reading is').selectOption({ label: 'number 2 of the line' })
  await page.getByRole('button', { name: 'Connect it' }).click()
  await expect(page.getByText('Listening.')).toBeVisible()
  expect(await page.evaluate(() => (globalThis as unknown as { gauge: Gauge }).gauge.opened)).toEqual({ baudRate: 4800, dataBits: 8, parity: 'none', stopBits: 1 })
  await expectAccessible(page)
  await send('01A+00003.5\r\n01A-0')
  await send('0001.0\r\nERR\r\n01A+00002\r\n')
  await expect(cell(page, 'A', 3)).toHaveValue('+2')
  expect((await textsOf(page)).slice(0, 4)).toEqual(['+3.5', '-1.0', '+2', ''])
  await expect(cell(page, 'A', 4)).toBeFocused()
  await page.getByRole('button', { name: 'Disconnect it' }).click()
  await expect(page.getByRole('button', { name: 'Connect it' })).toBeVisible()
})

test('without a serial line it is said what works instead', async ({ page, request }) => {
  await page.addInitScript(() => { delete (Navigator.prototype as { serial?: unknown }).serial })
  await shopWithBars(request, 'usual')
  await beginCheck(page)
  await page.getByRole('button', { name: /^read with/ }).click()
  await expect(page.getByText('A gage that types like a keyboard works as it is.').last()).toContainText('https')
  await expect(page.getByRole('button', { name: 'Connect it' })).toBeHidden()
})

test('a micrometer reads heights in either system, as typed, and each is said in both', async ({ page, request }) => {
  await shopWithBars(request, 'usual')
  await page.goto('/inspect')
  await page.getByRole('button', { name: /^Micrometer/ }).click()
  await page.getByRole('button', { name: /25 A/ }).click()
  await page.getByRole('button', { name: 'Done' }).click()
  const reading = (station: number) => page.getByRole('textbox', { name: `mm , 25 A, station ${station}` })
  await reading(1).focus()
  // 0.98437 in × 25.4 = 25.002998 mm.
  await give(page, ['25,003', '.98437"', '25.002 mm', '0,9843 in', '25.0025'])
  await expect(reading(2)).toHaveValue('.98437"')
  await reading(2).focus()
  await expect(page.getByText('.98437" is 0 µm (0 in) · 25.003 mm (0.98437 in)')).toBeVisible()
  await expect(page.getByRole('region', { name: '25 A', exact: true })).toContainText('parallel to')
  await expect(answer(page)).toContainText('nothing proved')
})

test('a slip of the unit is asked about at once: one tap puts it right, another keeps it', async ({ page, request }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await beginCheck(page)
  await give(page, ['25', '20', '+3', '0.004'])
  const asked = page.getByRole('alert').filter({ hasText: 'Was +4 µm meant?' })
  await expect(asked).toContainText('station 2')
  await asked.getByRole('button', { name: 'Meant +4 µm' }).click()
  await expect(cell(page, 'A', 2)).toHaveValue('+4 µm')
  await expect(asked).toBeHidden()
  await cell(page, 'A', 3).fill('25.003')
  await expect(page.getByRole('alert')).toContainText('whole height')
  await page.getByRole('button', { name: 'Keep 25.003' }).click()
  await expect(page.getByRole('alert')).toBeHidden()
  await expect(cell(page, 'A', 3)).toHaveValue('25.003')
})

test('a tab that dies in the middle loses no key, and another person goes on in another browser', { tag: '@away' }, async ({ page, request, browser, shop }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await worksHere(page, 'KM')
  await beginCheck(page)
  await give(page, ['25', '20', '+3', '+4', '+2'])
  await saved(page)
  // The last keys never reach the shop: they are on the device alone.
  await page.route('**/api/deeds', (route) => route.abort())
  await page.keyboard.type('+1')
  await expect(page.getByRole('button', { name: 'Saved here' })).toBeVisible()
  // Gone without a word, as when the tablet's battery ends; a key is written down within a few milliseconds.
  await page.waitForTimeout(200)
  const address = page.url(), gone = page.waitForEvent('crash')
  await page.goto('chrome://crash').catch(() => { /* The page is meant to die. */ })
  await gone
  const again = await page.context().newPage()
  await again.goto(address)
  await expect(cell(again, 'A', 4)).toHaveValue('+1')
  expect((await textsOf(again)).slice(0, 5)).toEqual(['+3', '+4', '+2', '+1', ''])
  await saved(again)
  const { context, page: other } = await another(browser, shop.url, 'JO')
  await other.goto('/inspect')
  const row = other.getByRole('listitem').filter({ hasText: '4 of 10 readings' })
  await expect(row).toContainText('KM')
  await row.getByRole('link', { name: /Go on/ }).click()
  await cell(other, 'A', 5).focus()
  await give(other, ['+2', '+6', '+5', '+4', '+5', '+6', '0'])
  await other.getByRole('button', { name: 'Keep this check' }).click()
  await expect(other).toHaveURL(/\/inspect\/done\//)
  await saved(other)
  await again.reload()
  await expect(again.getByRole('heading', { name: 'This check is not open' })).toBeVisible()
  const { checks } = await (await request.get('/api/shop')).json() as { checks: { method: string; person: string; readings: { text: string }[] }[] }
  expect(checks.find(({ method }) => method === 'compare')).toMatchObject({ person: 'JO' })
  expect(checks.find(({ method }) => method === 'compare')!.readings.map(({ text }) => text)).toEqual(['+3', '+4', '+2', '+1', '+2', '+6', '+5', '+4', '+5', '+6'])
  await context.close()
})

test('two who type into one check without seeing each other are both shown it, and one tap chooses', { tag: '@away' }, async ({ page, request, browser, shop }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await worksHere(page, 'KM')
  await beginCheck(page)
  await give(page, ['25', '20'])
  await saved(page)
  const { context, page: other } = await another(browser, shop.url, 'JO')
  await other.goto(page.url())
  await expect(cell(other, 'A', 1)).toBeVisible()
  await saved(other)
  await context.setOffline(true)
  await cell(other, 'A', 1).fill('+7')
  await cell(other, 'B', 1).fill('+6')
  await cell(page, 'A', 1).fill('+3')
  await cell(page, 'A', 2).fill('+4')
  await saved(page)
  await context.setOffline(false)
  await expect(other.getByRole('button', { name: '1 clash' })).toBeVisible({ timeout: 20_000 })
  await other.getByRole('button', { name: '1 clash' }).click()
  await other.getByRole('button', { name: /\+7.*JO/ }).click()
  await other.getByRole('button', { name: 'Close' }).click()
  await saved(other)
  // Only the cell that both typed into was in question.
  for (const [bar, station, text] of [['A', 1, '+7'], ['A', 2, '+4'], ['B', 1, '+6']] as const) {
    await expect(cell(other, bar, station)).toHaveValue(text)
    if (station === 1 && bar === 'A') await page.reload()
    await expect(cell(page, bar, station)).toHaveValue(text)
  }
  await context.close()
})

test('a check made while the shop is away is kept here and delivered', { tag: '@away' }, async ({ page, request, shop }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await page.goto('/inspect')
  const begin = page.getByRole('button', { name: /^Check at the plate/ })
  await expect(begin).toBeVisible()
  await saved(page)
  await shop.kill()
  await begin.click()
  await page.getByRole('searchbox').fill('abcd2345')
  await page.keyboard.press('Enter')
  await page.getByRole('button', { name: 'Done' }).click()
  await zero(page).focus()
  await give(page, ['25', '20', '+1', '+2', '+3', '+2', '+1', '0'])
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(figure(page, 'parallel to')).toHaveText('2')
  await expect(page.getByRole('button', { name: 'Saved here' })).toBeVisible()
  await shop.start()
  await page.getByRole('button', { name: 'Saved here' }).click()
  await page.getByRole('button', { name: 'Try now' }).click()
  await page.getByRole('button', { name: 'Close' }).click()
  await saved(page)
  const { checks, drafts } = await (await request.get('/api/shop')).json() as { checks: { method: string; readings: unknown[] }[]; drafts: unknown[] }
  expect(checks.filter(({ method }) => method === 'compare').map(({ readings }) => readings.length)).toEqual([5])
  expect(drafts).toEqual([])
})

test('nonsense is said to be nonsense where it stands, and nothing is kept of it', async ({ page, request }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await beginCheck(page)
  await give(page, ['25', '20'])
  for (const nonsense of ['abc', '1,2,3', '++3', '1/0', '🙂', '-', ',', '3 furlongs', '9'.repeat(40), 'NaN', '1e5', "'; drop"]) {
    await cell(page, 'A', 1).fill(nonsense)
    await cell(page, 'A', 2).focus()
    await expect(cell(page, 'A', 1)).toHaveValue(nonsense)
    await expect(page.getByRole('alert').or(page.locator('[data-asks]')).first(), nonsense).toBeVisible()
  }
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(page).toHaveURL(/\/inspect\/check\//)
  await expect(cell(page, 'A', 1)).toBeFocused()
  await cell(page, 'A', 1).fill('+3')
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(page.getByRole('alert')).toContainText('reading')
  await zero(page).fill('minus one')
  await expect(answer(page)).toBeVisible()
})

test('a bar that is not in the rack comes into it with its check', async ({ page, request }) => {
  await shopWithBars(request, 'fine', 'plate', 'blocks')
  await page.goto('/inspect')
  await page.getByRole('button', { name: /^Check at the plate/ }).click()
  await page.getByRole('button', { name: 'A bar that is not in the rack' }).click()
  const fields = page.getByRole('region', { name: /^New: / })
  await fields.getByLabel('marked on it').fill('Q')
  await fields.getByLabel(/^length/).fill('120')
  await expectAccessible(page)
  await page.getByRole('button', { name: 'Done' }).click()
  await zero(page).focus()
  await give(page, ['18', '20', '+1', '+2', '+1', '0'])
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(page.locator('.insp-refused')).toContainText('thickness')
  await fields.getByLabel(/^thickness/).fill('6')
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(page).toHaveURL(/\/inspect\/done\//)
  await saved(page)
  const { bars } = await (await request.get('/api/shop')).json() as { bars: { name: string }[] }
  expect(bars.find(({ name }) => name === 'Q')).toMatchObject({ thicknessMm: 6, lengthMm: 120, thicknessStanding: 'measured' })
  await page.goto('/rack')
  await expect(page.getByRole('link', { name: /18.*measured.*Q.*trusted.*6 × 120/ })).toBeVisible()
})

test('a correction is a new check that names the one it replaces; the old readings stay', async ({ page, request }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await beginCheck(page, 3, ['25 A'])
  await give(page, ['25', '20', '+3', '+40', '+2', '0'])
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(page.locator('.insp-refused')).toContainText('say first whether that is meant')
  await page.getByRole('button', { name: 'Keep +40' }).click()
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(page).toHaveURL(/\/inspect\/done\//)
  const first = page.url()
  await page.getByRole('button', { name: 'Correct this' }).click()
  expect(await textsOf(page)).toEqual(['+3', '+40', '+2'])
  await expect(zero(page)).toHaveValue('25')
  await cell(page, 'A', 2).fill('+4')
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await expect(page.getByText('Replaces')).toBeVisible()
  await expect(figure(page, 'parallel to')).toHaveText('2')
  await page.goto(first)
  await expect(page.getByText('A later check replaces this one.')).toBeVisible()
  await expect(figure(page, 'parallel to')).toHaveText('38')
  await page.getByRole('link', { name: 'All checks' }).click()
  await expect(page.getByRole('region', { name: 'Latest checks' }).getByRole('listitem')).toHaveCount(1)
})

test('a half-done check that was dropped comes back as it was', async ({ page, request }) => {
  await shopWithBars(request, 'usual', 'plate', 'blocks')
  await beginCheck(page)
  await give(page, ['25', '20', '+3'])
  await page.getByRole('button', { name: 'Drop it' }).click()
  await expect(page.getByRole('heading', { name: 'Half done' })).toBeHidden()
  await saved(page)
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('link', { name: /Go on/ }).click()
  await expect(cell(page, 'A', 1)).toHaveValue('+3')
  await saved(page)
  await page.reload()
  await expect(cell(page, 'A', 1)).toHaveValue('+3')
})

test('zero on the middle of one bar needs no block; either face up tells bow; a finger tells rock', async ({ page, request }) => {
  await shopWithBars(request, 'usual', 'plate')
  await beginCheck(page, 3, ['25 A'])
  await page.getByRole('button', { name: /^zero on/ }).click()
  await page.getByRole('radio', { name: 'middle of 25 A' }).check({ force: true })
  await page.getByRole('button', { name: 'Done' }).click()
  await page.getByRole('button', { name: /^method/ }).click()
  await page.getByRole('radio', { name: 'turned over' }).check({ force: true })
  await page.getByRole('button', { name: 'Done' }).click()
  await cells(page).first().focus()
  // Bowed by 4 µm toward face A, heights alike: A up the middle stands 4 above the ends, B up the bar stands on its middle's other side.
  await give(page, ['0', '+4', '0', '0', '-4', '0'])
  await expect(figure(page, 'bow to face A')).toHaveText('+4')
  await page.getByRole('button', { name: /^method/ }).click()
  await page.getByRole('radio', { name: 'rock' }).check({ force: true })
  await page.getByRole('button', { name: 'Done' }).click()
  await page.getByRole('radio', { name: 'rocks', exact: true }).check({ force: true })
  await expect(answer(page)).toContainText('It rocks')
})

for (const colorScheme of ['light', 'dark'] as const) {
  for (const viewport of [{ width: 1024, height: 768 }, { width: 390, height: 844 }]) {
    test.describe(`${colorScheme}, ${viewport.width} wide`, () => {
      test.use({ colorScheme, viewport })

      test('every screen keeps the rules of accessibility and its touch targets', { tag: '@looks' }, async ({ page, request }) => {
        test.slow()
        await shopWithBars(request, 'usual', 'plate', 'blocks')
        await page.goto('/inspect')
        await expect(page.getByRole('heading', { name: 'Latest checks' })).toBeVisible()
        await expectAccessible(page)
        await page.getByRole('button', { name: /^Check at the plate/ }).click()
        await expectAccessible(page)
        for (const bar of ['25 A', '25 B']) await page.getByRole('button', { name: new RegExp(`${bar}.*one bar`) }).click()
        await page.getByRole('button', { name: /^read with/ }).click()
        await expectAccessible(page)
        await page.getByRole('button', { name: /^stations/ }).click()
        await expectAccessible(page)
        await page.getByRole('button', { name: 'Done' }).click()
        await zero(page).focus()
        await give(page, ['25', '20', '+3', '0.004', 'abc', '+4'])
        await expectAccessible(page)
        for (const box of await cells(page).evaluateAll((fields) => fields.map((field) => field.getBoundingClientRect()))) {
          expect(Math.round(Math.min(box.width, box.height))).toBeGreaterThanOrEqual(72)
        }
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width)
      })
    })
  }
}
