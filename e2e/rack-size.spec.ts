import { expect, expectAccessible, test } from './shop.ts'

test.use({ demo: false })
test.slow()

const most = 10_000, perFile = 2000

test('ten thousand bars are found, scrolled and opened as if they were a hundred', async ({ page, shop }) => {
  for (let from = 0; from < most; from += perFile) {
    const lines = ['name,height mm,thickness mm,length mm,mates']
    for (let at = from; at < from + perFile; at += 1) lines.push(`X${at},${(5 + (at >> 1) * 0.01).toFixed(2)},${[4, 6, 8, 10][(at >> 1) % 4]},150,M${at >> 1}`)
    const answer = await page.request.post(`${shop.url}/api/rack/import`, { data: { id: `size${from}`, csv: lines.join('\n'), unit: 'mm', dryRun: false }, headers: { origin: shop.url }, timeout: 60_000 })
    expect(answer.ok(), await answer.text()).toBe(true)
  }
  await page.goto('/rack')
  const rows = page.locator('.rack-row')
  await expect(rows.first()).toBeVisible({ timeout: 30_000 })
  await expect(page.locator('.find output')).toHaveText(`${most} bars`)
  // Only what is in view exists, but each row says which of how many it is.
  expect(await rows.count()).toBeLessThan(60)
  await expect(page.locator('.rack-rows > li').first()).toHaveAttribute('aria-setsize', String(most / 2))

  await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' }))
  await expect(rows.last()).toContainText('X9999')
  expect(await rows.count()).toBeLessThan(60)
  await page.evaluate(() => scrollTo({ top: 0, behavior: 'instant' }))
  await expect(rows.first()).toContainText('X0')

  await page.getByLabel(/^Find a bar/).fill('30-30.05 t8')
  // 29.98, 30.02, 30.06 and 30.10: every fourth hundredth is 8 thick, and a height counts as the end it is 0.05 from.
  await expect(rows).toHaveCount(4)
  for (const text of await rows.locator('.rack-height strong').allTextContents()) { expect(Number(text)).toBeGreaterThanOrEqual(29.95); expect(Number(text)).toBeLessThanOrEqual(30.1) }
  await page.getByLabel(/^Find a bar/).fill('X4321')
  await expect(rows).toHaveCount(1)
  await page.getByLabel(/^Find a bar/).press('Enter')
  await expect(page.getByRole('heading', { level: 1 })).toContainText('X4321')
  await expectAccessible(page)
})
