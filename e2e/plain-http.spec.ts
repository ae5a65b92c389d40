import { atTheMachine, ownerIsSet } from './owner.ts'
import { relayTo } from './relay.ts'
import { expect, expectAccessible, test } from './shop.ts'

const executablePath = process.env['PW_CHROMIUM'] || undefined
// A name that is not the machine's own, so that the browser takes plain http for what it is.
test.use({
  opened: { args: ['--lan', '--host-name', 'shop.test'], before: ownerIsSet },
  launchOptions: { ...(executablePath ? { executablePath } : {}), args: ['--disable-quic', '--disable-background-networking', '--host-resolver-rules=MAP shop.test 127.0.0.1'] },
})

test('by plain http the app works while the shop answers, and says what it cannot do', async ({ browser, shop }) => {
  const relay = await relayTo(shop.url)
  const context = await browser.newContext({ baseURL: `http://shop.test:${relay.port}` }), tablet = await context.newPage()
  const code = (await atTheMachine(shop.dataFolder, ['device', 'code'])).trim()
  await tablet.goto(`/shop/enrol#${code.replace(' ', '')}`)
  expect(await tablet.evaluate(() => [isSecureContext, 'serviceWorker' in navigator])).toEqual([false, false])
  await tablet.getByLabel('name of this device').fill('Old tablet')
  await tablet.getByRole('button', { name: 'Enrol this device' }).click()
  await expect(tablet).toHaveURL(/\/setup$/)
  await tablet.goto('/shop')
  await tablet.getByLabel('name, as on prints').fill('Works of P')
  await tablet.getByRole('button', { name: 'Save the name' }).click()
  await tablet.getByRole('button', { name: 'Saved in the shop · plain http' }).click()
  await expect(tablet.getByRole('dialog')).toContainText('works only while the shop answers')
  await expectAccessible(tablet)
  await tablet.getByRole('link', { name: 'How https comes to this shop' }).click()
  await expect(tablet.getByRole('heading', { name: 'This shop has no authority of its own' })).toBeVisible()
  const cookies = await context.cookies()
  expect(cookies.map(({ name, httpOnly, secure, sameSite }) => ({ name, httpOnly, secure, sameSite }))).toEqual([{ name: 'twinrest-device', httpOnly: true, secure: false, sameSite: 'Lax' }])
  await context.close()
  await relay.close()
})
