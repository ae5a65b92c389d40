import { expect, expectAccessible, test } from './shop.ts'

test.describe('an empty shop', () => {
  test.use({ demo: false })

  test('a vise is added, changed, retired and taken back', async ({ page }) => {
    await page.goto('/shop/vise/new')
    await page.getByLabel('name', { exact: true }).fill('Front')
    await page.getByLabel('opens').fill('6"')
    await page.getByLabel('jaw width').fill('125')
    await page.getByLabel('fixed jaw height').fill('45')
    await page.getByRole('button', { name: 'Save the vise' }).click()
    await expect(page.getByRole('link', { name: /Front jaws 45 high.*opens 152\.4/ })).toBeVisible()
    await page.getByRole('link', { name: /^Front/ }).click()
    await page.getByLabel('movable jaw height').fill('44,5')
    await page.getByRole('button', { name: 'Save the vise' }).click()
    await expect(page.getByRole('link', { name: /jaws 45 \/ 44\.5 high/ })).toBeVisible()
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect(page.getByRole('link', { name: /jaws 45 high/ })).toBeVisible()
    await page.getByRole('link', { name: /^Front/ }).click()
    await page.getByRole('button', { name: 'Retire' }).click()
    await expect(page.getByText('No vise yet.')).toBeVisible()
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect(page.getByRole('link', { name: /^Front/ })).toBeVisible()
  })

  test('what is missing is said at every field, and the first of them is come to', async ({ page }) => {
    await page.goto('/shop/vise/new')
    await page.getByRole('button', { name: 'Save the vise' }).click()
    await expect(page.getByLabel('name', { exact: true })).toBeFocused()
    for (const field of ['opens', 'jaw width', 'fixed jaw height']) await expect(page.getByLabel(field)).toHaveAccessibleDescription(/nothing given/)
    await expectAccessible(page)
    await page.getByLabel('opens').fill('150')
    await expect(page.getByLabel('opens')).toHaveAccessibleDescription('= 5.9055 in')
  })

  test.describe('by touch', () => {
    test.use({ hasTouch: true })

    test('a press on Save at the foot of the page is heard while the number pad is still up', async ({ page }) => {
      await page.goto('/shop/vise/new')
      await page.getByLabel('name', { exact: true }).fill('Front')
      for (const [field, text] of [['opens', '150'], ['jaw width', '125'], ['fixed jaw height', '45']] as const) await page.getByLabel(field).fill(text)
      await page.getByLabel('movable jaw height').tap()
      await expect(page.getByRole('group', { name: /^Number pad/ })).toBeVisible()
      await page.evaluate(() => { scrollTo({ top: document.body.scrollHeight, behavior: 'instant' }) })
      await page.getByRole('button', { name: 'Save the vise' }).tap()
      await expect(page.getByRole('link', { name: /^Front/ })).toBeVisible()
    })
  })
})

test('units, decimal mark and words follow the switch at once, and stay', async ({ page }) => {
  await page.goto('/shop')
  await page.getByRole('radio', { name: 'inch' }).check()
  await page.getByRole('radio', { name: '0,00' }).check()
  await page.getByRole('radio', { name: 'vice, gauge' }).check()
  await expect(page.getByRole('heading', { name: 'Vices', exact: true })).toBeVisible()
  await expect(page.getByRole('link', { name: 'Units: in, decimal mark comma. Change in Shop' })).toBeVisible()
  await expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
  await page.reload()
  await expect(page.getByRole('radio', { name: 'inch' })).toBeChecked()
  await page.goto('/rack')
  await expect(page.locator('.rack-row').first()).toContainText(/\d,\d|\d\/\d/)
})

test('a person has units of their own', async ({ page }) => {
  await page.goto('/shop')
  await page.getByRole('button', { name: 'Initials', exact: true }).click()
  await page.getByLabel('initials', { exact: true }).fill('QX')
  await page.getByRole('button', { name: 'That is me' }).click()
  await page.getByRole('radio', { name: 'my own' }).check()
  await page.getByRole('group', { name: 'Lengths, QX' }).getByRole('radio', { name: 'inch' }).check()
  await expect(page.getByRole('link', { name: /^Units: in/ })).toBeVisible()
  await expect(page.getByRole('group', { name: 'Lengths', exact: true }).getByRole('radio', { name: 'mm' })).toBeChecked()
})

test('light and dark are kept on this device', async ({ page }) => {
  await page.goto('/shop')
  await page.getByRole('radio', { name: 'dark' }).check()
  await page.reload()
  await expect(page.getByRole('radio', { name: 'dark' })).toBeChecked()
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe('rgb(21, 25, 27)')
})

test('two people who change one field without seeing each other are asked, and one tap settles it', { tag: '@away' }, async ({ page, browser, shop }) => {
  await page.goto('/shop')
  const other = await (await browser.newContext({ baseURL: shop.url })).newPage()
  await other.goto('/shop')
  await other.getByLabel('name, as on prints').fill('Works of B')
  await other.context().setOffline(true)
  await other.getByRole('button', { name: 'Save the name' }).click()
  await expect(other.getByRole('button', { name: 'Saved here' })).toBeVisible()
  await page.getByLabel('name, as on prints').fill('Works of A')
  await page.getByRole('button', { name: 'Save the name' }).click()
  await expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
  await other.context().setOffline(false)
  await other.getByRole('button', { name: '1 clash' }).click()
  await expectAccessible(other)
  await other.getByRole('button', { name: /^Works of A/ }).click()
  await other.getByRole('button', { name: 'Close' }).click()
  await expect(other.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
  await page.reload()
  await expect(page.getByLabel('name, as on prints')).toHaveValue('Works of A')
  await other.context().close()
})

test('the card of a vise is a page in black, on the paper of the shop', async ({ page }) => {
  await page.goto('/shop')
  await page.getByRole('radio', { name: 'Letter' }).check()
  await page.getByRole('link', { name: /^Card of/ }).first().click()
  await expect(page.locator('.paper svg').first()).toBeVisible()
  await page.emulateMedia({ media: 'print' })
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden()
  const pdf = await page.pdf({ preferCSSPageSize: true })
  // A Letter page is 8.5 × 11 in of 72 points (ISO 32000-1, 7.7.3.3: MediaBox in points).
  expect(pdf.toString('latin1')).toMatch(/MediaBox \[0 0 612 792\]/)
})

test('every page of the shop is accessible, light and dark, and fits a phone', { tag: '@looks' }, async ({ page }) => {
  test.slow()
  await page.goto('/shop')
  const card = await page.getByRole('link', { name: /^Card of/ }).first().getAttribute('href')
  for (const path of ['/shop', '/shop/vise/new', card!, '/shop/vise/none', '/nowhere']) {
    await page.goto(path)
    await page.getByRole('heading', { level: 1 }).waitFor()
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      await expectAccessible(page)
    }
    for (const width of [360, 1024]) {
      await page.setViewportSize({ width, height: 768 })
      expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
    }
  }
  await page.goto('/shop')
  await page.getByRole('button', { name: 'Initials', exact: true }).click()
  await expectAccessible(page)
})
