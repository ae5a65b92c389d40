import { expect, expectAccessible, test } from './shop.ts'
import { seedBars } from './seed-bars.ts'

test.use({ demo: false })

// Own arithmetic: against 25, +3 +4 +2 and +6 +5 +4 differ by 3, 1, 2 as laid and by 1, 1, 4 with the second turned.
test('two bars: as laid 3, turned 4, drawn either way; taken, they are mates and stay so', async ({ page }) => {
  await seedBars(page, [{ id: 'left', um: [3, 4, 2] }, { id: 'right', um: [6, 5, 4] }])
  await page.goto('/inspect/mates')
  await expect(page.getByRole('heading', { name: '1 pair within 10 µm out of 2 bars' })).toBeVisible()
  const pair = page.locator('.mates-pair')
  await expect(pair).toContainText('Marked ends together.')
  await expect(pair.locator('dd').first()).toHaveText('3 µm')
  await expect(pair.getByRole('img')).toContainText('Worst difference 3 µm.')
  await expect(pair.getByRole('img')).toContainText('Worst difference 4 µm.')
  await page.getByRole('button', { name: 'Make these two mates' }).click()
  await expect(pair).toContainText('They are mates already.')
  await expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
  await page.goto('/rack')
  await expect(page.locator('.rack-row')).toHaveCount(1)
  await page.goBack()
  await page.reload()
  await expect(pair).toContainText('They are mates already.')
})

// Common practice, no source: mates 1 µm apart are fit for grinding, a milled pair within 6 µm for milling and drilling and not for grinding.
test('what a pair is good for follows from the readings and what the instrument can prove', async ({ page }) => {
  await seedBars(page, [{ id: 'g1', um: [0, 0.5, 0] }, { id: 'g2', um: [1, 1, 1] }, { id: 'm1', um: [0, 1, 0], blockMm: 30 }, { id: 'm2', um: [6, 5, 6], blockMm: 30 }])
  await page.goto('/inspect/mates')
  const uses = (name: string) => page.locator('.mates-pair', { hasText: name }).locator('.mates-uses li')
  await expect(uses('g1')).toHaveText([/✓ drilling/, /✓ milling/, /✓ fine milling/, /✓ grinding/])
  await expect(uses('m1')).toHaveText([/✓ drilling/, /✓ milling/, /× fine milling: out/, /× grinding: out/])
  await page.getByRole('radio', { name: 'grinding' }).check()
  await expect(page.getByRole('heading', { name: '1 pair within 2 µm out of 4 bars' })).toBeVisible()
})

test('the same readings with a coarse indicator prove no grinding', async ({ page }) => {
  await seedBars(page, [{ id: 'g1', um: [0, 0, 0] }, { id: 'g2', um: [1, 1, 1] }], 10)
  await page.goto('/inspect/mates')
  await expect(page.locator('.mates-uses li').last()).toHaveText(/\? grinding: not proved/)
})

test('a bar that leaves its mate is named beforehand, the one left behind is no pair, and undo brings all back', async ({ page }) => {
  await seedBars(page, [{ id: 'a', um: [0, 0, 0], matesId: 'old' }, { id: 'b', um: [9, 9, 9], matesId: 'old' }, { id: 'c', um: [1, 1, 1] }])
  await page.goto('/inspect/mates')
  await expect(page.locator('.mates-pair').first()).toContainText(/a leaves .*b.* is then without a mate, and no pair any more/)
  await page.getByRole('button', { name: 'Make these two mates' }).click()
  await page.getByRole('link', { name: 'Rack' }).click()
  await expect(page.locator('.rack-row')).toHaveCount(2)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.locator('.rack-row').filter({ hasText: 'old' })).toContainText('a · b')
})

test('four bars for two vises out of five, all of one set', async ({ page }) => {
  await seedBars(page, [{ id: 'p', um: [0, 0, 0] }, { id: 'q', um: [2, 2, 2] }, { id: 'r', um: [1, 2, 1] }, { id: 's', um: [0, 1, 0] }, { id: 'far', um: [9, 9, 9] }])
  await page.goto('/inspect/mates')
  await page.getByRole('radio', { name: '2 vises' }).check()
  await expect(page.getByRole('heading', { name: 'The nearest 4 of 5 bars' })).toBeVisible()
  await expect(page.getByText('All of them lie within 2 µm over all places')).toBeVisible()
  await expect(page.getByText(/^Left over: .*far\.$/)).toBeVisible()
  await page.getByRole('button', { name: 'Make them one set of mates' }).click()
  await page.getByRole('link', { name: 'Rack' }).click()
  await expect(page.locator('.rack-row').filter({ hasText: '(4)' })).toHaveCount(1)
})

test('only the bars that were picked, or of a height, are looked at', async ({ page }) => {
  await seedBars(page, [{ id: 'a', um: [0, 0, 0] }, { id: 'b', um: [1, 1, 1] }, { id: 'c', um: [2, 2, 2], blockMm: 30 }, { id: 'd', um: [3, 3, 3], blockMm: 30 }, { id: 'thick', um: [0, 0, 0], thicknessMm: 20 }])
  await page.goto('/inspect/mates')
  await expect(page.getByRole('heading', { name: '2 pairs within 10 µm out of 5 bars' })).toBeVisible()
  await page.getByLabel('heights to').fill('26')
  await expect(page.getByRole('heading', { name: '1 pair within 10 µm out of 3 bars' })).toBeVisible()
  await page.getByLabel('heights to').fill('x')
  await expect(page.getByLabel('heights to')).toHaveAccessibleDescription(/no length/)
  await page.getByLabel('heights to').fill('')
  await page.getByRole('radio', { name: 'those I pick' }).check()
  for (const name of ['c', 'd']) await page.locator('.pick-row').filter({ has: page.getByText(name, { exact: true }) }).click()
  await expect(page.getByRole('heading', { name: '1 pair within 10 µm out of 2 bars' })).toBeVisible()
})

test('a rack of many hundred bars is searched beside the screen', async ({ page }) => {
  await seedBars(page, Array.from({ length: 600 }, (_, at) => ({ id: `b${at}`, um: [(at * 37) % 211, (at * 37) % 211 + 1, (at * 37) % 211] })))
  await page.goto('/inspect/mates')
  await expect(page.getByRole('heading', { name: '300 pairs within 10 µm out of 600 bars' })).toBeVisible({ timeout: 30_000 })
  await expect(page.locator('.mates-pair')).toHaveCount(12)
  await page.getByRole('button', { name: /^Show more/ }).click()
  await expect(page.locator('.mates-pair')).toHaveCount(24)
})

test('light, dark and on a phone', { tag: '@looks' }, async ({ page }) => {
  await seedBars(page, [{ id: 'left', um: [3, 4, 2] }, { id: 'right', um: [6, 5, 4] }])
  await page.goto('/inspect/mates')
  await expect(page.locator('.mates-pair svg')).toBeVisible()
  for (const light of ['light', 'dark'] as const) { await page.emulateMedia({ colorScheme: light }); await expectAccessible(page) }
  await page.setViewportSize({ width: 390, height: 844 })
  await expect(page.locator('.mates-pair svg')).toBeVisible()
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
  await expectAccessible(page)
})
