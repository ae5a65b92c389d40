import { createHash, X509Certificate } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { atTheMachine, ownerIsSet } from './owner.ts'
import { relayTo } from './relay.ts'
import { expect, test } from './shop.ts'

const executablePath = process.env['PW_CHROMIUM'] || undefined
test.use({ opened: {
  args: ['--lan', '--host-name', 'shop.test'],
  before: async (folder) => { await ownerIsSet(folder); await atTheMachine(folder, ['certificate', '--host-name', 'shop.test']) },
} })

test('by https a tablet that trusts the shop keeps the app, and works without the network', async ({ playwright, shop }) => {
  const relay = await relayTo(shop.url)
  // What trusting the authority comes to for this browser: it takes the key of the server's certificate.
  const { publicKey } = new X509Certificate(readFileSync(join(shop.dataFolder, 'certificate', 'server.pem')))
  const trusted = createHash('sha256').update(publicKey.export({ type: 'spki', format: 'der' })).digest('base64')
  const browser = await playwright.chromium.launch({
    ...(executablePath ? { executablePath } : {}), args: ['--disable-quic', '--host-resolver-rules=MAP shop.test 127.0.0.1', `--ignore-certificate-errors-spki-list=${trusted}`],
  })
  const context = await browser.newContext({ baseURL: `https://shop.test:${relay.port}` }), tablet = await context.newPage()
  const code = (await atTheMachine(shop.dataFolder, ['device', 'code'])).trim()
  await tablet.goto(`/shop/enrol#${code.replace(' ', '')}`)
  expect(await tablet.evaluate(() => isSecureContext)).toBe(true)
  await tablet.getByLabel('name of this device').fill('Tablet')
  await tablet.getByRole('button', { name: 'Enrol this device' }).click()
  await expect(tablet).toHaveURL(/\/setup$/)
  const cookies = await context.cookies()
  expect(cookies.map(({ name, httpOnly, secure, sameSite }) => ({ name, httpOnly, secure, sameSite }))).toEqual([{ name: '__Host-twinrest-device', httpOnly: true, secure: true, sameSite: 'Lax' }])
  await tablet.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready
    if (active!.state !== 'activated') await new Promise((done) => { active!.addEventListener('statechange', () => { if (active!.state === 'activated') done(null) }) })
  })
  await expect(tablet.getByRole('button', { name: 'Saved in the shop', exact: true })).toBeVisible()
  await context.setOffline(true)
  await tablet.goto('/rack')
  await expect(tablet.getByRole('button', { name: 'Shop away' })).toBeVisible()
  await expect(tablet.locator('.rack-row').first()).toBeVisible()
  await browser.close()
  await relay.close()
})
