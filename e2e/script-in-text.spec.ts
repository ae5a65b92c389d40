import type { Page } from '@playwright/test'
import type { Change } from '#model/change.ts'
import { readField } from '#model/record-fields.ts'
import type { ShopFile } from '#model/shop-file.ts'
import { expect, test } from './shop.ts'
import { type ShopProcess, startShop } from './shop-process.ts'

/** The longest of these that a field takes: what a browser would run, and for eight letters what it would draw. */
const payloads = ['"><img src=x onerror=hit()><script>hit()</script>', '"><img src=x onerror=hit()>', '<img src=x onerror=hit()>', '<i>x</i>']
const ids = /^(id|saw|code|.*Id|bars|bar|kind|record|device|atIso|.*Iso|dueOn|replaces|undoes|check)$/

/** The value with script in the place of each text that the field takes it for. */
function spoilt(value: unknown, isTaken: (other: unknown) => boolean, put: (text: unknown) => unknown = (text) => text): unknown {
  if (typeof value === 'string') return payloads.find((text) => isTaken(put(text))) ?? value
  if (typeof value !== 'object' || value === null) return value
  const whole: { [key: string]: unknown } | unknown[] = Array.isArray(value) ? [...value] : { ...value }
  for (const key of Object.keys(whole)) {
    if (ids.test(key)) continue
    const at = whole as { [key: string]: unknown }
    at[key] = spoilt(at[key], isTaken, (text) => put(Array.isArray(whole) ? whole.map((one, k) => (String(k) === key ? text : one) as unknown) : { ...whole, [key]: text }))
  }
  return whole
}

function spoiltChange(change: Change): Change {
  const isTaken = (field: string) => (value: unknown) => { try { readField(change.kind, field, value, field); return true } catch { return false } }
  return { ...change, person: payloads.at(-1)!, fields: Object.fromEntries(Object.entries(change.fields).map(([field, { value, saw }]) => [field, { value: (ids.test(field) ? value : spoilt(value, isTaken(field))) as Change['fields'][string]['value'], saw }])) }
}

/** All links of our own on a page, in the order they come. */
const linksOn = (page: Page) => page.evaluate(() => [...document.querySelectorAll<HTMLAnchorElement>('a[href^="/"]')].map((link) => link.getAttribute('href')!).filter((href) => !href.startsWith('/api/')))

test.describe('script in every text', () => {
  test.use({ demo: false })

  test('is shown as text on every screen and print', { tag: '@looks' }, async ({ page, shop }) => {
    test.setTimeout(600_000)
    const demo: ShopProcess = await startShop({ demo: true, env: { TWINREST_DATABASE_URL: '' } })
    const file = await (await fetch(`${demo.url}/api/export`)).json() as ShopFile
    await demo.clear()
    const [short] = payloads.slice(-1), text = payloads[0]!
    const spoiltFile: ShopFile = {
      ...file, changes: file.changes.map(spoiltChange),
      checks: file.checks.map((check) => ({ ...check, person: short!, note: text, readings: check.readings.map((one) => ({ ...one, text: payloads[2]! })) })),
      events: file.events.map((event) => ({ ...event, person: short!, note: text })),
    }
    const spoiltTexts = JSON.stringify(spoiltFile).split('hit()').length
    expect(spoiltTexts).toBeGreaterThan(100)
    const answer = await fetch(`${shop.url}/api/import`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(spoiltFile) })
    expect([answer.status, await answer.json()]).toEqual([200, expect.any(Object)])

    const run: string[] = [], shape = (path: string) => path.replaceAll(/[^/]*[\dA-Z-][^/]*/g, '*')
    await page.exposeFunction('hit', () => { run.push(page.url()) })
    page.on('dialog', (dialog) => { run.push(page.url()); void dialog.dismiss() })
    const seen = new Set<string>(), next = ['/setup', '/inspect', '/inspect/quick', '/inspect/box', '/inspect/mates', '/rack', '/rack/import', '/make', '/shop']
    while (next.length > 0) {
      const path = next.shift()!
      // Of pages alike, one.
      if (seen.has(shape(path))) continue
      seen.add(shape(path))
      await page.goto(path)
      await page.locator('main').first().waitFor()
      await expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()
      await page.waitForTimeout(200)
      next.push(...await linksOn(page))
      for (const media of ['screen', 'print'] as const) {
        await page.emulateMedia({ media })
        expect(await page.evaluate(() => [...document.querySelectorAll('img[src="x"], main i, main script, svg script, svg image, [onerror], [onload]')].map((found) => found.outerHTML)), `${path} on ${media}`).toEqual([])
      }
      await page.emulateMedia({ media: 'screen' })
      expect(run, path).toEqual([])
    }
    expect(seen.size).toBeGreaterThan(12)
    await page.goto('/rack')
    await expect(page.locator('main')).toContainText('<img src=x onerror=hit()>')
  })
})
