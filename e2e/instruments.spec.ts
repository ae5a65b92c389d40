import type { Page } from '@playwright/test'
import { expect, expectAccessible, test } from './shop.ts'

test.use({ demo: false })

const save = (page: Page) => page.getByRole('button', { name: /^Save (the|it)/ }).click()
const row = (page: Page, name: RegExp) => page.getByRole('link', { name })

async function addPlate(page: Page, { due = '' } = {}) {
  await page.goto('/shop/instrument/new')
  await page.getByLabel('name', { exact: true }).fill('Granite')
  await page.getByLabel('length of the plate').fill('630')
  await page.getByLabel('width of the plate').fill('400')
  await page.getByLabel('rule and grade').selectOption('DIN 876 0')
  await page.getByLabel('due again on').fill(due)
}

// DIN 876 grade 0: 4 µm and a 250th of the longest side, 6.52 µm for 630 mm (own arithmetic).
test('the flatness of a plate follows from size and grade, and a certificate goes before it', async ({ page }) => {
  await addPlate(page)
  await expect(page.getByLabel('rule and grade')).toHaveAccessibleDescription(/flat to 6\.5 µm by DIN 876 grade 0 and size \(DIN-876\)/)
  await expectAccessible(page)
  await save(page)
  await expect(row(page, /^Granite/)).toContainText('flat to 6.5 µm by DIN 876 grade 0')
  await row(page, /^Granite/).click()
  await page.getByLabel(/^by certificate/).fill('3,2')
  await save(page)
  await expect(row(page, /^Granite/)).toContainText('flat to 3.2 µm by certificate (the shop’s own)')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(row(page, /^Granite/)).toContainText('6.5 µm')
})

// DIN 863: ± 4 µm from 25 to 50 mm (fixtures/published/micrometer-din863.csv).
test('a micrometer takes its permissible error from the book by its range; a figure of the shop is called its own', async ({ page }) => {
  await page.goto('/shop/instrument/new')
  await page.getByRole('radio', { name: 'micrometer' }).check()
  await page.getByLabel('name', { exact: true }).fill('Micrometer 25 to 50')
  await page.getByLabel('range by the book').selectOption({ label: '25 to 50: ± 4 µm (DIN-863)' })
  await page.getByLabel(/^reads to/).fill('1')
  await expect(page.getByLabel(/^permissible error/)).toHaveAccessibleDescription('DIN-863')
  await page.getByLabel(/^permissible error/).fill('2.5')
  await expect(page.getByLabel(/^permissible error/)).toHaveAccessibleDescription('the shop’s own')
  await save(page)
  await expect(row(page, /^Micrometer/)).toContainText('± 2.5 µm (the shop’s own)')
  await expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
  await page.reload()
  await expect(row(page, /^Micrometer/)).toContainText('25 to 50; reads to 1 µm')
})

// JIS B 7503: ± 2 µm over a tenth of a turn of a dial of 0.001 mm; DIN 861 grade 1: ± 0.3 µm up to 25 mm (fixtures/published).
test('an indicator by its class and gage blocks by their grade, each with its source', async ({ page }) => {
  await page.goto('/shop/instrument/new')
  await page.getByRole('radio', { name: 'indicator' }).check()
  await page.getByLabel('name', { exact: true }).fill('Dial')
  await page.getByLabel('figures by the book').selectOption({ label: 'dial, large bezel, 1 µm, range 1 mm: ± 2 µm, repeats 0.5 µm (JIS-B-7503)' })
  await save(page)
  await expect(row(page, /^Dial/)).toContainText('± 2 µm (JIS-B-7503)')
  await page.goto('/shop/instrument/new')
  await page.getByRole('radio', { name: 'gage blocks' }).check()
  await page.getByLabel('name', { exact: true }).fill('Blocks')
  await page.getByLabel('grade', { exact: true }).selectOption('1')
  await save(page)
  await expect(row(page, /^Blocks/)).toContainText('± 0.3 µm up to 25')
})

test('one that is overdue is marked and said in words; retired it goes, and comes back', async ({ page }) => {
  await addPlate(page, { due: '2020-01-31' })
  await save(page)
  await expect(row(page, /^Granite/)).toContainText(/! overdue: was due/)
  for (const light of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: light })
    await expectAccessible(page)
  }
  await row(page, /^Granite/).click()
  await page.getByRole('button', { name: 'Retire' }).click()
  await expect(row(page, /^Granite/)).toHaveCount(0)
  await page.getByRole('button', { name: 'Show the retired (1)' }).click()
  await expect(row(page, /^Granite \(retired\)/)).toBeVisible()
})

test('what is missing or cannot be is said at its field', async ({ page }) => {
  await page.goto('/shop/instrument/new')
  await page.getByRole('radio', { name: 'micrometer' }).check()
  await page.getByLabel('range from').fill('50')
  await page.getByLabel('range to').fill('25')
  await save(page)
  await expect(page.getByLabel('name', { exact: true })).toBeFocused()
  await expect(page.getByLabel('range to')).toHaveAccessibleDescription(/more than 50/)
  await expect(page.getByLabel(/^reads to/)).toHaveAccessibleDescription(/nothing given/)
  await expect(page.getByText('Nothing was saved yet')).toBeVisible()
})

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 } })
  test('every field is in reach, nothing beside the screen', { tag: '@looks' }, async ({ page }) => {
    for (const kind of ['plate', 'indicator', 'gage blocks', 'micrometer']) {
      await page.goto('/shop/instrument/new')
      await page.getByRole('radio', { name: kind }).check()
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
      for (const field of await page.locator('.page .field input').all()) expect((await field.boundingBox())!.height).toBeGreaterThanOrEqual(72)
      await expectAccessible(page)
    }
  })
})

test('limits for each use are the shop’s own to change, and can be taken back', async ({ page }) => {
  await page.goto('/shop')
  await page.getByLabel('fine milling, µm').fill('0')
  await page.getByRole('button', { name: 'Save the limits' }).click()
  await expect(page.getByLabel('fine milling, µm')).toHaveAccessibleDescription(/more than 0/)
  await page.getByLabel('fine milling, µm').fill('4')
  await page.getByRole('button', { name: 'Save the limits' }).click()
  await expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
  await page.reload()
  await expect(page.getByLabel('fine milling, µm')).toHaveValue('4')
  await expect(page.getByLabel('grinding, µm')).toHaveValue('2')
  await page.getByLabel('grinding, µm').fill('1')
  await page.getByRole('button', { name: 'Save the limits' }).click()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByLabel('grinding, µm')).toHaveValue('2')
})
