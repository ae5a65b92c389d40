import type { Page } from '@playwright/test'
import { type SeededBar, seedBars } from './seed-bars.ts'
import { seedVises } from './seed-vises.ts'
import { expect, expectAccessible, test } from './shop.ts'

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true })
const answer = (page: Page) => page.getByRole('region', { name: 'Answer' })
const bed = (page: Page, vise: string) => field(page, `${vise} bed, µm`)
const saved = (page: Page) => expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()

/** Both bars of a pair at one height, µm above 30. */
const pair = (name: string, um: number): readonly SeededBar[] => ['1', '2'].map((one) => ({ id: `${name}${one}`, um: [um, um, um], blockMm: 30, matesId: name }))

/** Three vises and three pairs near 30: 30.0015, 29.9985, 30.004. */
async function shopOfThree(page: Page): Promise<void> {
  await seedVises(page, ['V1', 'V2', 'V3'])
  await seedBars(page, [...pair('A', 1.5), ...pair('B', -1.5), ...pair('C', 4)])
}

async function typeBeds(page: Page): Promise<void> {
  for (const [vise, um] of [['V1', '0'], ['V2', '+18'], ['V3', '-9']] as const) await bed(page, vise).fill(um)
}

test.describe('a row of three', () => {
  test.use({ demo: false })

  // By hand: tops are bed + mean, 1.5, 16.5 and −5 µm above 30 for A, B, C in order; they spread over 21.5, and against the first lie +15 and −6.5.
  test('deals the pairs so that tops lie alike, tells each vise its Z, and a long bar its slope', async ({ page }) => {
    await shopOfThree(page)
    await page.goto('/setup/row')
    await expect(page.getByText('Bed not measured: V1, V2 and V3.')).toBeVisible()
    await typeBeds(page)
    const lines = answer(page).getByRole('listitem')
    await expect(lines.nth(0)).toContainText(/V1.*30 A.*0Z, mm/)
    await expect(lines.nth(1)).toContainText(/V2.*30 B.*\+0\.015Z, mm/)
    await expect(lines.nth(2)).toContainText(/V3.*30 C.*−0\.0065Z, mm/)
    await expect(answer(page)).toContainText('Tops within 21.5 µm')
    // 18 µm over 250 is 0.072 µm/mm, 28.8 µm over 400
    await field(page, 'apart middles of the two').fill('250')
    await field(page, 'its length').fill('400')
    await expect(page.getByText('0.029 mm end to end')).toBeVisible()
    for (const colorScheme of ['light', 'dark'] as const) { await page.emulateMedia({ colorScheme }); await expectAccessible(page) }
  })

  test('locks pairs and vises together, takes that back, and prints the sheet of the row', async ({ page }) => {
    await shopOfThree(page)
    await page.goto('/setup')
    await field(page, 'height of the part').focus()
    for (const text of ['25', '2', '60', '80']) { await page.keyboard.type(text); await page.keyboard.press('Enter') }
    await page.goto('/setup/row')
    await expect(page.getByText('Same setup in all: 60 × 80 × 25')).toBeVisible()
    await typeBeds(page)
    await expect(answer(page).getByRole('listitem').nth(1)).toContainText('Grip 15')
    await page.getByRole('button', { name: 'Lock pairs and vises' }).click()
    await expect(page.getByText('30 A in V1, 30 B in V2 and 30 C in V3: locked together.')).toBeVisible()
    await saved(page)
    const whereOf = async (bar: string) => ((await (await page.request.get('/api/shop')).json()) as { bars: { id: string; where: object }[] }).bars.find(({ id }) => id === bar)?.where
    expect(await whereOf('B2')).toEqual({ at: 'vise', viseId: 'V2' })
    await page.getByRole('button', { name: 'Undo' }).click()
    await saved(page)
    await expect.poll(() => whereOf('B2')).toEqual({ at: 'slot' })
    await page.getByRole('button', { name: 'Print row sheet' }).click()
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Row sheet')
    await expect(page.getByRole('region', { name: /^Page, / })).toHaveCount(1)
    const words = await page.locator('.paper text').allTextContents()
    for (const said of ['V2', '30 B', '+0.015', '−0.0065', 'Cautions']) expect(words.some((word) => word.includes(said)), said).toBe(true)
    await expectAccessible(page)
  })

  test('runs each vise with a Z of its own by the match of the pairs', async ({ page }) => {
    await seedVises(page, ['V1', 'V2'])
    await seedBars(page, [{ id: 'a1', um: [0, 0, 0], blockMm: 30, matesId: 'A' }, { id: 'a2', um: [6, 6, 6], blockMm: 30, matesId: 'A' }, ...pair('B', 9), ...pair('C', 20)])
    await page.goto('/setup/row')
    await bed(page, 'V1').fill('0')
    await bed(page, 'V2').fill('0')
    await page.getByRole('radio', { name: 'a Z each' }).check({ force: true })
    await expect(answer(page).getByRole('listitem').nth(0)).toContainText('30.01 B')
    await expect(answer(page)).toContainText('the worst pair matches to 0 µm')
  })

  test('fits a phone and a tablet held upright', { tag: '@looks' }, async ({ page }) => {
    await shopOfThree(page)
    for (const [width, height] of [[800, 1280], [390, 844]] as const) {
      await page.setViewportSize({ width, height })
      await page.goto('/setup/row')
      await typeBeds(page)
      await expect(answer(page)).toContainText('Tops within')
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
      await expectAccessible(page)
    }
  })
})

test.describe('the pull list', () => {
  test('takes one pair where one does for all that was touched, and names its slot', async ({ page }) => {
    await page.goto('/setup/day')
    const setups = page.getByRole('list', { name: 'Setups' }).getByRole('button')
    await setups.first().click()
    await expect(answer(page).getByRole('heading', { level: 2 })).toContainText('One pair serves all')
    await expect(answer(page)).toContainText('slot')
    await setups.nth(1).click()
    await expect(answer(page).getByRole('heading', { level: 3 })).toHaveText('In this order')
    await expectAccessible(page)
  })
})
