import type { Page } from '@playwright/test'
import jsQR from 'jsqr'
import { atTheMachine, ownerIsSet, passphrase } from './owner.ts'
import { relayTo } from './relay.ts'
import { expect, expectAccessible, test } from './shop.ts'

test.use({ opened: { args: ['--lan'], before: ownerIsSet } })

/** What an independent reader reads off a code as it stands on the screen. */
async function scanned(page: Page, title: string): Promise<string | undefined> {
  const shot = (await page.getByRole('img', { name: title }).screenshot()).toString('base64')
  const { width, height, pixels } = await page.evaluate(async (png) => {
    const bytes = Uint8Array.from(atob(png), (letter) => letter.charCodeAt(0)), picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
    const canvas = new OffscreenCanvas(picture.width, picture.height).getContext('2d')!
    canvas.drawImage(picture, 0, 0)
    return { width: picture.width, height: picture.height, pixels: [...canvas.getImageData(0, 0, picture.width, picture.height).data] }
  }, shot)
  return jsQR(Uint8ClampedArray.from(pixels), width, height)?.data
}

async function letIn(owner: Page): Promise<string> {
  await owner.goto('/shop')
  await owner.getByRole('button', { name: 'Let in a device' }).click()
  const asked = owner.getByRole('dialog', { name: 'For the owner' }), sheet = owner.getByRole('dialog', { name: 'Let in a device' })
  await expect(asked.or(sheet)).toBeVisible()
  if (await asked.isVisible()) {
    await asked.getByLabel('owner’s passphrase').fill(passphrase)
    await asked.getByRole('button', { name: 'Go on' }).click()
  }
  return (await sheet.locator('.code-said').textContent())!
}

/** What the shop is called, as its server keeps it. */
async function nameOf(page: Page): Promise<string> {
  return (await (await page.request.get('/api/shop')).json() as { shop: { name: string } }).shop.name
}

async function enrol(tablet: Page, code: string, name: string): Promise<void> {
  for (const letter of code.replace(' ', '')) await tablet.getByRole('button', { name: letter, exact: true }).click()
  await tablet.getByLabel('name of this device').fill(name)
  await tablet.getByRole('button', { name: 'Enrol this device' }).click()
}

test('a tablet is let in by its code, writes, is revoked, keeps what it did meanwhile, and is let in again', async ({ page: owner, browser, shop }) => {
  test.slow()
  const relay = await relayTo(shop.url)
  const context = await browser.newContext({ baseURL: relay.url }), tablet = await context.newPage()
  await tablet.goto('/rack')
  await expect(tablet.getByRole('heading', { name: 'Enrol this device' })).toBeVisible()
  await expectAccessible(tablet)
  await enrol(tablet, 'ABCD EFGH', 'Tablet at the mill')
  await expect(tablet.getByRole('alert')).toContainText('This code lets nobody in')
  await tablet.getByRole('textbox', { name: 'code' }).fill('')

  const code = await letIn(owner)
  await expectAccessible(owner)
  expect(await scanned(owner, 'Address with the code')).toMatch(new RegExp(`^http://.+/shop/enrol#${code.replace(' ', '')}$`))
  await owner.getByRole('button', { name: 'Close' }).click()
  await enrol(tablet, code, 'Tablet at the mill')
  await expect(tablet).toHaveURL(/\/setup$/)
  await tablet.goto('/shop')
  await expect(tablet.getByText('this device, enrolled')).toBeVisible()
  await tablet.getByLabel('name, as on prints').fill('Works of B')
  await tablet.getByRole('button', { name: 'Save the name' }).click()
  await expect(tablet.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()

  expect(await nameOf(owner)).toBe('Works of B')
  await owner.goto('/shop')
  await owner.getByRole('button', { name: 'Name Tablet at the mill anew' }).click()
  await owner.getByRole('dialog').getByLabel('name').fill('Tablet at the drill')
  await owner.getByRole('dialog').getByRole('button', { name: 'Save the name' }).click()
  await owner.getByRole('button', { name: 'Revoke Tablet at the drill' }).click()
  await expect(owner.getByText(/, revoked \d{4}/)).toBeVisible()

  await tablet.getByLabel('name, as on prints').fill('Works of C')
  await tablet.getByRole('button', { name: 'Save the name' }).click()
  await expect(tablet.getByRole('button', { name: 'Not enrolled' })).toBeVisible()
  await expect(tablet.getByRole('alert')).toContainText('does not let this device in any more')
  await tablet.reload()
  await expectAccessible(tablet)
  await tablet.getByRole('button', { name: 'Not enrolled' }).click()
  await expect(tablet.getByRole('dialog')).toContainText('it is sent as soon as the device is enrolled')
  await tablet.getByRole('button', { name: 'Close' }).click()
  await tablet.getByRole('link', { name: 'Enrol this device' }).click()
  await expect(tablet.getByText('One thing done here waits on this device.')).toBeVisible()
  await expectAccessible(tablet)

  await enrol(tablet, await letIn(owner), 'Tablet, again')
  await expect(tablet.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
  expect(await nameOf(owner)).toBe('Works of C')
  await context.close()
  await relay.close()
})

test('a scanned code stands in its field, and new initials are for the owner to give', async ({ browser, shop }) => {
  const relay = await relayTo(shop.url)
  const context = await browser.newContext({ baseURL: relay.url }), tablet = await context.newPage()
  const code = (await atTheMachine(shop.dataFolder, ['device', 'code'])).trim()
  await tablet.goto(`/shop/enrol#${code.replace(' ', '')}`)
  await expect(tablet.getByRole('textbox', { name: 'code' })).toHaveValue(code)
  await tablet.getByLabel('name of this device').fill('Phone')
  await tablet.getByRole('button', { name: 'Enrol this device' }).click()
  await expect(tablet).toHaveURL(/\/setup$/)
  await tablet.goto('/shop')
  await tablet.getByRole('button', { name: 'Initials', exact: true }).click()
  await tablet.getByRole('button', { name: 'New initials: for the owner to give' }).click()
  await tablet.getByLabel('owner’s passphrase').fill('not this one at all')
  await tablet.getByRole('button', { name: 'Go on', exact: true }).click()
  await expect(tablet.getByText('This is not the passphrase.')).toBeVisible()
  await tablet.getByLabel('owner’s passphrase').fill(passphrase)
  await tablet.getByRole('button', { name: 'Go on', exact: true }).click()
  await tablet.getByLabel('initials', { exact: true }).fill('QX')
  await tablet.getByRole('button', { name: 'That is me' }).click()
  await expect(tablet.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
  await expect(tablet.getByRole('button', { name: /^QX works here/ })).toBeVisible()
  await atTheMachine(shop.dataFolder, ['device', 'revoke', 'Phone'])
  await tablet.goto('/rack')
  await expect(tablet.getByRole('alert')).toContainText('does not let this device in any more')
  await context.close()
  await relay.close()
})

test('the owner changes the passphrase on the machine itself', async ({ page }) => {
  await page.goto('/shop')
  await page.getByRole('button', { name: 'Change the passphrase' }).click()
  await page.getByLabel('new passphrase').fill('another short sentence')
  await page.getByLabel('once more').fill('another long sentence')
  await page.getByRole('button', { name: 'Set the passphrase' }).click()
  await expect(page.getByText('The two are not alike.')).toBeVisible()
  await page.getByLabel('once more').fill('another short sentence')
  await page.getByRole('button', { name: 'Set the passphrase' }).click()
  await page.getByLabel('owner’s passphrase').fill(passphrase)
  await page.getByRole('button', { name: 'Go on', exact: true }).click()
  await expect(page.getByText('The passphrase is set.')).toBeVisible()
  await expectAccessible(page)
  await page.getByRole('button', { name: 'Lock again' }).click()
  await expect(page.getByRole('button', { name: 'Lock again' })).toBeHidden()
})

test('the page that makes a device trust the shop is accessible and fits a phone', { tag: '@looks' }, async ({ page, shop }) => {
  await atTheMachine(shop.dataFolder, ['certificate'])
  await shop.stop()
  await shop.start()
  await page.goto('/trust')
  await expect(page.getByRole('heading', { name: 'Make this device trust the shop' })).toBeVisible()
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    await expectAccessible(page)
  }
  await page.setViewportSize({ width: 360, height: 740 })
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
  expect(await scanned(page, 'This page for another device')).toMatch(/^http:\/\/.+\/trust$/)
})
