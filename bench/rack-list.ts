import { resolve } from 'node:path'
import { chromium, type Page } from '@playwright/test'
import { startShop } from '../e2e/shop-process.ts'
import type { BenchRow } from './bench-row.ts'

const bars = 10_000, perFile = 2000, rounds = 3, mostFirstMs = 1000, mostKeyMs = 200, frames = 60

/**
 * The rack with ten thousand bars: from a tap on its tab to the first rows painted, frames while it is scrolled through, and a key in the search, beside
 * the plain way (all rows in the page at once, written in one go without any framework).
 */
export async function run(): Promise<BenchRow[]> {
  const shop = await startShop({ demo: false, main: resolve('dist/node/main.js') })
  const executablePath = process.env['PW_CHROMIUM']
  const browser = await chromium.launch({ ...(executablePath ? { executablePath } : {}), args: ['--disable-quic', '--disable-sync'] })
  try {
    await fillRack(shop.url)
    const page = await browser.newPage({ viewport: { width: 1024, height: 768 } })
    await page.goto(`${shop.url}/rack`)
    await page.locator('.rack-row').first().waitFor({ timeout: 60_000 })
    const first = await leastOf(() => firstRows(page)), scroll = await scrolled(page, '.rack-row'), key = await leastOf(() => oneKey(page))
    const plain = await leastOf(() => plainRows(page)), plainScroll = await scrolled(page, '.plain-row')
    return [
      { name: `rack of ${bars} bars, tab to first rows`, figure: `${first.toFixed(0)} ms with all that the rack works out; the plain rows alone ${plain.toFixed(0)} ms`, target: `under ${mostFirstMs} ms, and under the plain rows`, ratio: plain / first, met: first < Math.min(mostFirstMs, plain) },
      { name: `rack of ${bars} bars, scrolled through`, figure: `slowest of ${frames} frames ${scroll.toFixed(0)} ms against ${plainScroll.toFixed(0)} ms of the plain list`, target: 'no slower than the plain list, within a tenth of a second', ratio: plainScroll / scroll, met: scroll <= Math.max(100, plainScroll) },
      { name: `rack of ${bars} bars, a key in the search`, figure: `${key.toFixed(0)} ms to the redrawn list`, target: `under ${mostKeyMs} ms`, ratio: key / mostKeyMs, met: key < mostKeyMs },
    ]
  } finally {
    await browser.close()
    await shop.clear()
  }
}

async function leastOf(work: () => Promise<number>): Promise<number> {
  let least = Infinity
  for (let round = 0; round < rounds; round += 1) least = Math.min(least, await work())
  return least
}

/** From the tap on the tab to the paint after the first row is there. */
async function firstRows(page: Page): Promise<number> {
  await page.locator('.shell-tabs a', { hasText: 'Shop' }).click()
  await page.locator('.rack-row').first().waitFor({ state: 'detached' })
  return page.evaluate(() => new Promise<number>((done) => {
    const from = performance.now(), seen = new MutationObserver(() => {
      if (!document.querySelector('.rack-row')) return
      seen.disconnect()
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - from)))
    })
    seen.observe(document.body, { childList: true, subtree: true })
    ;[...document.querySelectorAll<HTMLElement>('.shell-tabs a')].find((tab) => tab.textContent === 'Rack')!.click()
  }))
}

/** As many rows as the rack has, each like the first, put in at once. */
async function plainRows(page: Page): Promise<number> {
  return page.evaluate((count) => new Promise<number>((done) => {
    document.querySelector('.plain')?.remove()
    const row = document.querySelector<HTMLElement>('.rack-row')!.outerHTML.replace('rack-row', 'rack-row plain-row'), from = performance.now(), list = document.createElement('ul')
    list.className = 'plain'
    list.innerHTML = `<li>${row}</li>`.repeat(count)
    document.querySelector('.desk-sheet')!.append(list)
    requestAnimationFrame(() => setTimeout(() => done(performance.now() - from)))
  }), bars / 2)
}

/** The slowest frame while the page is scrolled from its top to its end. */
async function scrolled(page: Page, row: string): Promise<number> {
  await page.locator(row).first().waitFor()
  return page.evaluate((count) => new Promise<number>((done) => {
    const end = document.documentElement.scrollHeight - innerHeight
    let at = 0, slowest = 0, last = performance.now()
    const step = () => {
      const now = performance.now()
      if (at > 0) slowest = Math.max(slowest, now - last)
      last = now
      if (at > count) return done(slowest)
      scrollTo({ top: (end * at) / count, behavior: 'instant' })
      at += 1
      requestAnimationFrame(step)
    }
    requestAnimationFrame(step)
  }), frames)
}

/** A digit typed into the search, to the paint of the rows it leaves. */
async function oneKey(page: Page): Promise<number> {
  const search = page.locator('input[type="search"]')
  await search.fill('3')
  await page.waitForTimeout(300)
  const before = await page.locator('.find output').textContent()
  return page.evaluate((counted) => new Promise<number>((done) => {
    const from = performance.now(), input = document.querySelector<HTMLInputElement>('input[type="search"]')!, seen = new MutationObserver(() => {
      if (document.querySelector('.find output')!.textContent === counted) return
      seen.disconnect()
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - from)))
    })
    seen.observe(document.body, { childList: true, subtree: true, characterData: true })
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!.call(input, '31')
    input.dispatchEvent(new Event('input', { bubbles: true }))
  }), before)
}

/** Ten thousand bars in pairs, a hundredth apart, four thicknesses. */
async function fillRack(url: string): Promise<void> {
  for (let from = 0; from < bars; from += perFile) {
    const lines = ['name,height mm,thickness mm,length mm,mates']
    for (let at = from; at < from + perFile; at += 1) lines.push(`X${at},${(5 + (at >> 1) * 0.01).toFixed(2)},${[4, 6, 8, 10][(at >> 1) % 4]},150,M${at >> 1}`)
    const answer = await fetch(`${url}/api/rack/import`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ id: `list${from}`, csv: lines.join('\n'), unit: 'mm', dryRun: false }) })
    if (!answer.ok) throw new Error(`the rack was not filled: ${await answer.text()}`)
  }
}
