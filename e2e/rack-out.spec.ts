import type { Browser, Page } from '@playwright/test'
import { expect, expectAccessible, test } from './shop.ts'
import type { ShopProcess } from './shop-process.ts'

type Kept = { readonly bars: readonly { readonly id: string; readonly matesId: string | null; readonly code: string; readonly where: { readonly at: string; readonly who?: string; readonly sinceIso?: string; readonly dueOn?: string }; readonly saw: { readonly where?: readonly string[] } }[]; readonly events: readonly { readonly id: string; readonly bar: string; readonly kind: string; readonly note: string; readonly undoes: string | null; readonly atIso: string }[] }
const kept = async (page: Page, shop: ShopProcess) => await (await page.request.get(`${shop.url}/api/shop`)).json() as Kept
const saved = (page: Page) => expect(page.getByRole('button', { name: /^(Saved in the shop|\d+ clash)/ })).toBeVisible()

/** A tablet of its own at which somebody works. */
async function tablet(browser: Browser, shop: ShopProcess, initials: string): Promise<Page> {
  const context = await browser.newContext({ baseURL: shop.url, viewport: { width: 1024, height: 768 }, locale: 'en-GB' }), page = await context.newPage()
  await page.goto('/rack')
  await page.getByRole('button', { name: 'Initials', exact: true }).click()
  await page.getByRole('dialog').getByRole('button', { name: initials, exact: true }).click()
  return page
}

test('a pair goes out in one tap on initials, comes back in one tap that says how, and both can be taken back', async ({ page, shop }) => {
  const before = await kept(page, shop), first = before.bars.find(({ matesId, where }) => matesId !== null && where.at === 'slot')!, pair = before.bars.filter(({ matesId }) => matesId === first.matesId)
  const whereNow = async () => (await kept(page, shop)).bars.filter(({ matesId }) => matesId === first.matesId).map(({ where }) => where.at === 'slot' ? 'slot' : where.who ?? where.at)
  await page.goto(`/rack/${first.id}`)
  await page.getByRole('button', { name: 'KM', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'Out with KM' })).toBeVisible()
  await saved(page)
  expect(await whereNow()).toEqual(pair.map(() => 'KM'))

  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByRole('heading', { name: 'Take them out to' })).toBeVisible()
  await expect.poll(whereNow).toEqual(pair.map(() => 'slot'))

  await page.getByRole('button', { name: 'KM', exact: true }).click()
  await page.getByRole('button', { name: 'Back, nicked' }).click()
  await expect(page.getByText('Look at it first: nicked')).toBeVisible()
  await saved(page)
  const events = (await kept(page, shop)).events.filter(({ bar }) => bar === first.id), undone = new Set(events.map(({ undoes }) => undoes))
  expect(events.filter(({ id, kind }) => !undone.has(id) && (kind === 'signed out' || kind.startsWith('back'))).map(({ kind, note }) => `${kind} ${note}`.trim())).toEqual(['signed out KM', 'back nicked'])

  await page.getByText('History').click()
  await expect(page.getByRole('listitem').filter({ hasText: 'Signed out: KM.' })).toBeVisible()
  await expect(page.getByRole('listitem').filter({ hasText: 'Back, nicked.' })).toBeVisible()
})

test('our own vise and machine change nothing, a person not looked at and another shop do', async ({ page, shop }) => {
  const trusted = page.locator('.rack-row').filter({ hasText: 'trusted' }).filter({ hasNotText: /in Mill|out with/ }).first()
  await page.goto('/rack')
  const address = (await trusted.getAttribute('href'))!
  await page.goto(address)
  await page.getByRole('button', { name: 'Bench mill' }).click()
  await page.getByRole('button', { name: 'Back in its slot' }).click()
  await expect(page.getByText(/^. Trusted:/)).toBeVisible()
  await page.getByRole('button', { name: 'JO', exact: true }).click()
  await page.getByRole('button', { name: 'Back, fine' }).click()
  await expect(page.getByText(/^. Trusted:/)).toBeVisible()
  await page.getByRole('button', { name: 'JO', exact: true }).click()
  await page.getByRole('button', { name: 'Back, not looked at' }).click()
  await expect(page.getByText('Look at it first: came back and nobody looked')).toBeVisible()
  await page.getByRole('radio', { name: 'both' }).check()
  await page.getByRole('button', { name: 'Looked over' }).click()
  await expect(page.getByText(/^. Trusted:/)).toBeVisible()
  await page.getByText('Due back, someone else').click()
  await page.getByRole('textbox', { name: 'name' }).fill('The shop across the yard')
  await page.getByRole('button', { name: 'Out to this name' }).click()
  await expect(page.getByText('Look at it first: was at another shop')).toBeVisible()
  await saved(page)
  expect((await kept(page, shop)).bars.filter(({ where }) => where.who === 'The shop across the yard')).toHaveLength(2)
})

test('what is overdue stands on top of the list of who has what, in words', async ({ page, shop }) => {
  const bars = (await kept(page, shop)).bars.filter(({ where, matesId }) => where.at === 'slot' && matesId !== null).slice(0, 2)
  const answer = await page.request.post(`${shop.url}/api/deeds`, { headers: { origin: shop.url }, data: {
    checks: [], events: [],
    changes: bars.map(({ id, saw }, at) => ({ id: `late${at}`, kind: 'bar', record: id, person: 'TB', device: 'bench', atIso: '2020-01-02T08:00:00.000Z', fields: { where: { saw: saw.where ?? [], value: { at: 'out', who: 'TB', to: 'person', sinceIso: '2020-01-02T08:00:00.000Z', dueOn: '2020-01-05' } } } })),
  } })
  expect(answer.ok(), await answer.text()).toBe(true)
  await page.goto('/rack')
  await page.getByRole('link', { name: '2 bars are overdue' }).click()
  await expect(page.locator('.out-holder').first()).toContainText('Out with TB')
  await expect(page.locator('.out-holder').first()).toContainText('due back 5 Jan 2020: overdue')
  await page.getByLabel(/^Find a bar/).fill('overdue')
  await expect(page.locator('.rack-row')).toHaveCount(1)
  await expect(page.locator('.rack-row')).toContainText('out with TB, overdue')
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    await expectAccessible(page)
  }
  await page.locator('.out-holder').first().getByRole('button', { name: /Back, fine/ }).click()
  await page.getByLabel(/^Find a bar/).fill('')
  await expect(page.getByText('overdue')).toHaveCount(0)
})

test('two tablets sign the same pair out within a second: one stands, the other person is told, nothing is lost', async ({ browser, page, shop }) => {
  const first = (await kept(page, shop)).bars.find(({ matesId, where }) => matesId !== null && where.at === 'slot')!
  const [one, other] = await Promise.all([tablet(browser, shop, 'KM'), tablet(browser, shop, 'JO')])
  for (const tab of [one, other]) { await tab.goto(`/rack/${first.id}`); await tab.getByRole('heading', { name: 'Take them out to' }).waitFor() }
  // The wireless is slow: neither tablet has heard of the other when its own tap is sent.
  let tapped = () => { /* until both have */ }
  const both = new Promise<void>((done) => { tapped = done })
  for (const tab of [one, other]) await tab.route('**/api/deeds', async (route) => { await both; await route.continue() })
  await Promise.all([[one, 'KM'] as const, [other, 'JO'] as const].map(([tab, name]) => tab.getByRole('button', { name, exact: true }).evaluate((button: HTMLElement) => button.click())))
  tapped()
  for (const tab of [one, other]) await expect(tab.getByRole('button', { name: /clash/ })).toBeVisible({ timeout: 20_000 })
  const taps = (await kept(page, shop)).events.filter(({ bar, kind }) => kind === 'signed out' && bar === first.id).map(({ atIso }) => Date.parse(atIso))
  expect(Math.abs(taps[0]! - taps[1]!)).toBeLessThan(1000)

  // Both are told, on whichever tablet they look: who has it now, and that there were two.
  for (const tab of [one, other]) {
    await tab.reload()
    await expect(tab.getByRole('button', { name: '2 clashes' })).toBeVisible()
    await expect(tab.getByText('Changed by two people who did not see each other.')).toBeVisible()
  }
  const now = await kept(page, shop), pair = now.bars.filter(({ matesId }) => matesId === first.matesId), stands = pair[0]!.where.who!
  expect(['KM', 'JO']).toContain(stands)
  expect(pair.map(({ where }) => where.who), 'the pair stays together').toEqual(pair.map(() => stands))
  expect(now.events.filter(({ bar, kind }) => kind === 'signed out' && bar === first.id).map(({ note }) => note).sort()).toEqual(['JO', 'KM'])
  const history = await (await page.request.get(`${shop.url}/api/history/bar/${first.id}`)).json() as readonly { readonly what: string; readonly fields?: { readonly where?: { readonly fate: string; readonly value: { readonly who?: string } } } }[]
  expect(history.flatMap(({ fields }) => (fields?.where && fields.where.value.who ? [fields.where.fate] : [])).sort()).toEqual(['aside', 'stands'])

  // The one who has it says so, once for the pair; then nobody is told any more.
  const right = stands === 'KM' ? 'JO' : 'KM'
  await expectAccessible(one)
  await one.getByRole('button', { name: new RegExp(`^out with ${right}`) }).click()
  await expect(one.getByRole('heading', { name: `Out with ${right}` })).toBeVisible()
  for (const tab of [one, other]) {
    await tab.reload()
    await expect(tab.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
    await expect(tab.getByRole('heading', { name: `Out with ${right}` })).toBeVisible()
  }
  await Promise.all([one.context().close(), other.context().close()])
})

test('taking a signing back leaves the pair with whoever it was handed on to meanwhile', async ({ browser, page, shop }) => {
  const first = (await kept(page, shop)).bars.find(({ matesId, where }) => matesId !== null && where.at === 'slot')!
  const whereNow = async () => (await kept(page, shop)).bars.filter(({ matesId }) => matesId === first.matesId).map(({ where }) => where.who ?? where.at)
  const [one, other] = await Promise.all([tablet(browser, shop, 'KM'), tablet(browser, shop, 'JO')])
  await one.goto(`/rack/${first.id}`)
  await one.getByRole('button', { name: 'KM', exact: true }).click()
  await saved(one)
  await other.goto(`/rack/${first.id}`)
  await other.getByText('Hand them on').click()
  await other.getByRole('button', { name: 'TB', exact: true }).click()
  await expect(one.getByRole('heading', { name: 'Out with TB' })).toBeVisible()
  await one.getByRole('button', { name: 'Undo' }).click()
  await expect(one.getByRole('button', { name: 'Undo' })).toHaveCount(0)
  await saved(one)
  await expect.poll(async () => (await kept(page, shop)).events.filter(({ bar, kind }) => bar === first.id && kind === 'undone').length).toBe(1)
  expect(await whereNow()).toEqual(['TB', 'TB'])
  await Promise.all([one.context().close(), other.context().close()])
})

test('on a phone and on a tablet every button of out and back is large enough, and nothing scrolls sideways', { tag: '@looks' }, async ({ page, shop }) => {
  const first = (await kept(page, shop)).bars.find(({ matesId, where }) => matesId !== null && where.at === 'slot')!
  for (const [width, height] of [[360, 640], [390, 844], [1024, 768]] as const) {
    await page.setViewportSize({ width, height })
    for (const path of [`/rack/${first.id}`, '/rack/out', '/rack/missing', `/rack/regrind/${first.id}`]) {
      await page.goto(path)
      await page.getByRole('heading', { level: 1 }).waitFor()
      expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), `${path} at ${width}`).toBe(0)
      for (const high of await page.locator('.action:visible, .choice-one:visible').evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height))) expect(high).toBeGreaterThanOrEqual(71.9)
    }
  }
})
