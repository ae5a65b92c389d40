import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { expect, test } from '../shop.ts'

const folder = join(import.meta.dirname, '../../docs/pictures')
const sizes = [{ width: 1024, height: 768 }, { width: 390, height: 844 }]
const field = (page: Page, path: string) => page.locator(`[data-path="${path}"] input`)

/** The plate of the demo: 38 × 60 × 19, 6 off the top, two holes through beside the fixed jaw. */
async function askForThePlate(page: Page): Promise<void> {
  await page.goto('/setup')
  for (const [path, text] of [['height', '19'], ['offTop', '6'], ['between', '38'], ['along', '60']] as const) await field(page, path).fill(text)
  await page.locator('#add-cut').click()
  await field(page, 'cuts[0].diameter').fill('8.5')
  await field(page, 'cuts[0].across').fill('6')
  await field(page, 'cuts[0].along').fill('10')
  await page.getByRole('button', { name: '× 2 along' }).click()
  await page.getByRole('button', { name: 'Done' }).click()
  await page.getByRole('button', { name: /pair C, inboard/ }).click()
  await expect(page.locator('main')).toContainText('10.75')
}

const screens: readonly { readonly name: string; readonly open: (page: Page) => Promise<void> }[] = [
  { name: 'setup', open: askForThePlate },
  { name: 'rack', open: async (page) => { await page.goto('/rack'); await expect(page.locator('.rack-row').nth(2)).toBeVisible() } },
  { name: 'shop', open: async (page) => { await page.goto('/shop'); await expect(page.getByRole('heading').first()).toBeVisible() } },
]

for (const viewport of sizes) for (const colorScheme of ['light', 'dark'] as const) for (const { name, open } of screens) {
  test.describe(`${viewport.width} × ${viewport.height}, ${colorScheme}`, () => {
    test.use({ viewport, colorScheme })
    test(name, async ({ page }) => {
      await open(page)
      await page.waitForTimeout(300)
      await page.evaluate(() => { scrollTo(0, 0) })
      await page.waitForTimeout(300)
      await page.screenshot({ path: join(folder, `${name}-${viewport.width}x${viewport.height}-${colorScheme}.png`) })
    })
  })
}
