import AxeBuilder from '@axe-core/playwright'
import { test as base, expect, type Page } from '@playwright/test'
import { type Cluster, startCluster } from './postgres/cluster.ts'
import { startShop, type ShopProcess } from './shop-process.ts'

type Opened = { readonly args: readonly string[]; readonly before: (dataFolder: string) => Promise<void> }

/**
 * Stories with a shop of their own: `test.use({ demo: false })` for an empty one; `page.goto('/setup')` goes to it.
 *
 * Tagged `@away` where the shop or the network goes away: only there the browser keeps the whole app, which costs each story
 * half a second. Tagged `@looks` where nothing but looks is asked, which no database changes.
 */
export const test = base.extend<{ demo: boolean; opened: Opened | null; shop: ShopProcess }, { postgres: Cluster | null }>({
  /** Where TWINREST_STORIES_ON is `postgres`: a server of each worker's own, with a database for each story. */
  // oxlint-disable-next-line no-empty-pattern -- Playwright reads what a fixture needs from this very pattern.
  postgres: [async ({}, use) => {
    const postgres = process.env['TWINREST_STORIES_ON'] === 'postgres' ? await startCluster() : null
    await use(postgres)
    await postgres?.clear()
  }, { scope: 'worker' }],
  demo: [true, { option: true }],
  /** How the shop is opened to others; null: it is not. */
  opened: [null, { option: true }],
  shop: async ({ demo, opened, postgres }, use, { testId, retry }) => {
    // Where the server looks, and the command that a story runs at the machine.
    if (postgres) process.env['TWINREST_DATABASE_URL'] = await postgres.makeDatabase(`story_${testId.replaceAll('-', '_')}_${retry}`)
    const shop = await startShop({ demo, ...opened })
    await use(shop)
    await shop.clear()
  },
  context: async ({ context }, use, { tags }) => {
    if (!tags.includes('@away')) await context.addInitScript(() => { delete (Navigator.prototype as { serviceWorker?: unknown }).serviceWorker })
    await use(context)
  },
  baseURL: async ({ shop }, use) => { await use(shop.url) },
  page: async ({ page }, use) => {
    const wrong: string[] = []
    page.on('pageerror', (error) => wrong.push(error.message))
    await use(page)
    expect(wrong, 'errors of the page itself').toEqual([])
  },
})

export { expect }

/**
 * No finding of the accessibility rules up to WCAG 2.2 AA on the page as it stands. The dark page differs from the light one in
 * its colours alone, so there only contrast is looked at: the rest takes seconds on a long page.
 */
export async function expectAccessible(page: Page): Promise<void> {
  // In the page itself, which has no frames, and without what is in order: half the time.
  const dark = await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches), axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] })
  const { violations } = await (dark ? axe.withRules(['color-contrast']) : axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])).analyze()
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`)).toEqual([])
}
