import type { Page } from '@playwright/test'
import { seedBars } from './seed-bars.ts'
import { seedVises } from './seed-vises.ts'
import { expect, expectAccessible, test } from './shop.ts'

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true })
const strip = (page: Page, where: RegExp) => page.getByRole('button', { name: where })
const meaning = (page: Page) => page.getByRole('region', { name: 'What it may mean' })

/** Touches a strip until it stands as found: tight, drags, free. */
async function pull(page: Page, where: string, found: 'tight' | 'drags' | 'free'): Promise<void> {
  for (let touches = { tight: 1, drags: 2, free: 3 }[found]; touches > 0; touches -= 1) await strip(page, new RegExp(`^Strip at the ${where}`)).click()
  await expect(strip(page, new RegExp(`^Strip at the ${where}: ${found}$`))).toBeVisible()
}

/** A part of 60 between the jaws on two bars 8 thick: their middles are 52 apart. */
async function setUp(page: Page): Promise<void> {
  await seedVises(page, ['V1'])
  await seedBars(page, [{ id: 'a1', um: [0, 0, 0], blockMm: 30, matesId: 'A' }, { id: 'a2', um: [1, 1, 1], blockMm: 30, matesId: 'A' }])
  await page.goto('/setup')
  await field(page, 'height of the part').focus()
  for (const text of ['25', '2', '60', '80']) { await page.keyboard.type(text); await page.keyboard.press('Enter') }
  await page.getByRole('button', { name: 'Is it down?' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Is it down?')
}

test.describe('the paper test', () => {
  test.use({ demo: false })

  // reference rules, section 11: both strips at the moving jaw free means jaw lift, then a high bar at the fixed jaw, then a side not square;
  // by hand: a strip of 0.03 over 52 is 0.03 · 60 / 52 = 0.0346 over a part of 60.
  test('both strips at the moving jaw free: jaw lift first, and the test that tells each cause', async ({ page }) => {
    await setUp(page)
    for (const end of ['left', 'right']) {
      await pull(page, `fixed jaw, ${end} end`, 'tight')
      await pull(page, `movable jaw, ${end} end`, 'free')
    }
    await expect(meaning(page).getByRole('heading', { level: 2 })).toHaveText('The side at the movable jaw is up by 0.03 at least between the strips, 0.035 over the part.')
    await expect(meaning(page)).toContainText('52 apart')
    const causes = meaning(page).getByRole('listitem')
    await expect(causes.nth(0)).toContainText(/movable jaw lifts.*Slacken to snug/)
    await expect(causes.nth(1)).toContainText(/bar at the fixed jaw is higher.*Exchange the bars: it goes with the bar/)
    await expect(causes.nth(2)).toContainText(/not square.*Turn the part round: it goes with the part/)
    await expect(causes).toHaveCount(3)
    for (const colorScheme of ['light', 'dark'] as const) { await page.emulateMedia({ colorScheme }); await expectAccessible(page) }
  })

  test('says nothing before all four are tried, and that all four held is all this paper can tell', async ({ page }) => {
    await page.goto('/setup/down')
    await expect(page.getByText('No strip tried yet.')).toBeVisible()
    await pull(page, 'fixed jaw, left end', 'tight')
    await expect(page.getByText('1 of 4 strips tried.')).toBeVisible()
    await page.getByRole('button', { name: 'All four tight' }).click()
    await expect(meaning(page)).toContainText('a gap of up to 0.03 is not seen')
    await page.getByRole('checkbox', { name: 'An indicator says the top is out' }).check({ force: true })
    await expect(meaning(page)).toContainText('look at the bars, the bed and the underside')
    await page.getByRole('button', { name: 'Start again' }).click()
    await expect(page.getByText('No strip tried yet.')).toBeVisible()
  })

  test('a strip that drags beside tight ones counts as loose, by about its thickness; dirt is straight across while the jaws are closed', async ({ page }) => {
    await page.goto('/setup/down')
    await page.getByRole('button', { name: 'All four tight' }).click()
    await strip(page, /^Strip at the movable jaw, left end/).click()
    await expect(meaning(page)).toContainText(/One corner is loose.*at fixed jaw, left, then movable jaw, left.*about its own thickness/i)
  })

  for (const [width, height] of [[1024, 768], [800, 1280], [390, 844]] as const) {
    test(`strips are large enough for a thumb and all in view at ${width} × ${height}`, { tag: '@looks' }, async ({ page }) => {
      await page.setViewportSize({ width, height })
      await page.goto('/setup/down')
      const strips = strip(page, /^Strip at/)
      await expect(strips).toHaveCount(4)
      for (const one of await strips.all()) {
        const box = (await one.boundingBox())!
        expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(72)
        expect(box.x).toBeGreaterThanOrEqual(0)
        expect(box.y + box.height).toBeLessThanOrEqual(height)
      }
      await expectAccessible(page)
    })
  }
})
