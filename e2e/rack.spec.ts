import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { expect, expectAccessible, test } from './shop.ts'

/** Adds bars by keyboard alone, from the screen of the rack. */
async function addBars(page: Page, { how = 'a pair', height, thickness = '8', length = '150', slot = '', name = '' }: { how?: string; height: string; thickness?: string; length?: string; slot?: string; name?: string }) {
  await page.goto('/rack/new')
  await page.getByRole('radio', { name: how }).check()
  await page.getByLabel('height', { exact: true }).focus()
  for (const text of [height, thickness, length, slot]) {
    await page.keyboard.type(text)
    await page.keyboard.press('Enter')
  }
  await page.keyboard.type(name)
  await page.getByRole('button', { name: /^Add th/ }).press('Enter')
  await expect(page.getByRole('heading', { level: 1 })).toContainText(name.slice(0, 4))
}

const saved = (page: Page) => expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible()

test.describe('an empty shop', () => {
  test.use({ demo: false })

  test('says what to do first, and loads the demo at one tap', async ({ page }) => {
    await page.goto('/rack')
    await expect(page.getByRole('link', { name: 'Add the bars you have' })).toBeVisible()
    await expectAccessible(page)
    await page.getByRole('button', { name: 'Load the demo shop' }).click()
    await expect(page.locator('.rack-row').nth(5)).toBeVisible()
  })

  test('a pair typed by keyboard stands as look first and marked, and is still there after a reload', async ({ page }) => {
    await addBars(page, { height: '1 3/8', slot: 'B4', name: 'C' })
    await expect(page.getByRole('heading', { level: 1 })).toContainText('34.925')
    await expect(page.getByText('Look at it first: new here.')).toBeVisible()
    await saved(page)
    await page.reload()
    const row = page.getByRole('link', { name: /34\.925.*C 1.*C 2/ })
    await expect(row).toContainText('look first')
    await expect(row).toContainText('marked')
    await expect(row).toContainText('B4')
  })

  test('both are looked over in two taps, and it can be taken back', async ({ page }) => {
    await addBars(page, { height: '35', name: 'C' })
    await page.getByRole('radio', { name: 'both' }).check()
    await page.getByRole('button', { name: 'Looked over' }).click()
    await expect(page.locator('.rack-row').first()).toContainText('trusted')
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect(page.locator('.rack-row').first()).toContainText('look first')
    await page.getByText('History').click()
    await expect(page.getByText('Came into the rack, marked 35.')).toBeVisible()
  })

  test('a micrometer reading makes the height measured', async ({ page }) => {
    await page.goto('/rack/new')
    await page.getByRole('radio', { name: 'one, odd' }).check()
    await page.getByRole('radio', { name: 'measured here' }).check()
    await page.getByLabel(/^one end/).fill('25,003')
    await page.getByLabel(/^middle/).fill('25,001')
    await page.getByLabel('thickness').fill('10')
    await page.getByLabel('length').fill('150')
    await page.getByRole('button', { name: 'Add this bar' }).click()
    await expect(page.getByRole('definition').filter({ hasText: '25.002' })).toBeVisible()
  })

  test('what cannot be read is said at its field, and nothing is added', async ({ page }) => {
    await page.goto('/rack/new')
    for (const [text, says] of [['', 'nothing given'], ['abc', 'no '], ['-5', 'more than 0'], ['0', 'more than 0'], ['1e308', 'no '], ['9999999', 'too large'], ['1.2.3', 'two decimal marks']] as const) {
      await page.getByLabel('height', { exact: true }).fill(text)
      await page.getByRole('button', { name: 'Add these bars' }).click()
      await expect(page.getByLabel('height', { exact: true })).toHaveAccessibleDescription(new RegExp(says))
      await expect(page.getByLabel('height', { exact: true })).toBeFocused()
    }
    await page.goto('/rack')
    await expect(page.getByRole('link', { name: 'Add the bars you have' })).toBeVisible()
  })

  test('names show as they were typed, whatever stands in them', async ({ page }) => {
    const name = '<img src=x onerror=alert(1)> שלום 😀'
    let asked = false
    page.on('dialog', (dialog) => { asked = true; void dialog.dismiss() })
    await addBars(page, { how: 'one, odd', height: '30', name })
    await expect(page.getByRole('heading', { level: 1 })).toContainText(name)
    await expect(page.locator('.rack-row')).toContainText(name)
    expect(asked).toBe(false)
  })

  test('a broken list names its lines and brings in nothing; a good one is looked through first', async ({ page }) => {
    await page.goto('/rack/import')
    await page.getByLabel('or its lines, pasted').fill('name,width,thickness,length,mates\nA,35,8,150,P\nB,abc,8,150,P\nC,0,8,150,')
    await page.getByRole('button', { name: 'Look through it' }).click()
    await expect(page.getByText('Line 3')).toBeVisible()
    await expect(page.getByText('Line 4')).toBeVisible()
    await expect(page.getByRole('button', { name: /^Bring in/ })).toHaveCount(0)
    await page.getByLabel('or its lines, pasted').fill('name,width,thickness,length,mates\nA,35,8,150,P\nB,35,8,150,P\nC,20,8,150,')
    await page.getByRole('button', { name: 'Look through it' }).click()
    await expect(page.getByRole('alert')).toContainText('3 bars, 20 to 35 mm high')
    await expect(page.getByRole('alert')).toContainText(/width/i)
    await expectAccessible(page)
    await page.getByRole('button', { name: 'Bring in 3 bars' }).click()
    await expect(page.locator('.rack-row')).toHaveCount(2)
    await expect(page.locator('.rack-row').first()).toContainText('look first')
  })

  test('a list whose answer was lost on the way is in once, however often it is sent', async ({ page }) => {
    let lost = 0
    await page.route('**/api/rack/import', async (route) => {
      const { dryRun } = route.request().postDataJSON() as { dryRun: boolean }
      if (dryRun || lost > 0) return await route.continue()
      lost += 1
      expect((await route.fetch()).status()).toBe(200)
      return await route.abort()
    })
    await page.goto('/rack/import')
    await page.getByLabel('or its lines, pasted').fill('height,thickness,length,mates\n35,8,150,P\n35,8,150,P')
    await page.getByRole('button', { name: 'Look through it' }).click()
    await page.getByRole('button', { name: 'Bring in 2 bars' }).click()
    await expect(page.getByRole('alert')).toContainText('does not answer just now')
    expect(lost).toBe(1)
    await page.getByRole('button', { name: 'Look through it' }).click()
    await expect(page.locator('.rack-row')).toHaveCount(1)
  })

  test('a file in UTF-16 with its mark is read, and comes out again as CSV', async ({ page }) => {
    await page.goto('/rack/import')
    const csv = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from('name,height,thickness,length\nÜber ½,35,8,150', 'utf16le')])
    await page.getByLabel('A file').setInputFiles({ name: 'bars.csv', mimeType: 'text/csv', buffer: csv })
    await page.getByRole('button', { name: 'Look through it' }).click()
    await page.getByRole('button', { name: 'Bring in 1 bar' }).click()
    await expect(page.locator('.rack-row')).toContainText('Über ½')
    const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save as CSV' }).click()])
    const written = await readFile(await file.path(), 'utf8')
  expect(written.startsWith('\ufeff')).toBe(true)
  expect(written).toContain('Über ½')
  })

  test('while the server is away the work goes on, and arrives when it is back', { tag: '@away' }, async ({ page, shop }) => {
    await addBars(page, { height: '35', name: 'C' })
    await saved(page)
    await shop.kill()
    await page.getByRole('button', { name: 'Knocked' }).click()
    await expect(page.getByRole('button', { name: 'Saved here' })).toBeVisible()
    await expect(page.getByText('Look at it first: new here and knocked')).toBeVisible()
    await shop.start()
    // Nobody has to ask: it goes by itself once the server is heard again.
    await page.getByRole('button', { name: 'Saved in the shop' }).click({ timeout: 40_000 })
    await expect(page.getByText('Everything done here is in the shop.')).toBeVisible()
    await page.getByRole('button', { name: 'Close' }).click()
    await page.getByText('History').click()
    await expect(page.getByRole('listitem').filter({ hasText: 'knocked' })).toBeVisible()
  })
})

test('what the shop refuses is said and kept until somebody has seen it', async ({ page }) => {
  await page.goto('/rack')
  await page.locator('.rack-row').nth(3).click()
  await page.route('**/api/deeds', (route) => route.fulfill({ status: 422, json: { refused: 'unknown-record', facts: { field: 'events[0].bar', kind: 'bar', given: 'x' } } }))
  await page.getByRole('button', { name: 'Knocked' }).click()
  await page.getByRole('button', { name: '1 not taken' }).click()
  await expect(page.getByRole('dialog')).toContainText('there is no bar')
  await expectAccessible(page)
  await page.reload()
  await page.getByRole('button', { name: '1 not taken' }).click()
  await page.getByRole('button', { name: 'Seen, put it away' }).click()
  await expect(page.getByText('Everything done here is in the shop.')).toBeVisible()
})

test.describe('the number pad', () => {
  test.use({ demo: false, hasTouch: true, viewport: { width: 390, height: 844 } })

  test('types what a hand would, next goes on, and the cursor stays in the field', async ({ page }) => {
    await page.goto('/rack/new')
    await page.getByLabel('height', { exact: true }).tap()
    const pad = page.getByRole('group', { name: /^Number pad: height/ })
    for (const key of ['1', 'space', '3', 'over', '8']) await pad.getByRole('button', { name: key, exact: true }).tap()
    await expect(page.getByLabel('height', { exact: true })).toHaveValue('1 3/8')
    await expect(page.getByLabel('height', { exact: true })).toBeFocused()
    await page.keyboard.press('Backspace')
    await pad.getByRole('button', { name: '4', exact: true }).tap()
    await expect(page.getByLabel('height', { exact: true })).toHaveValue('1 3/4')
    await expectAccessible(page)
    await pad.getByRole('button', { name: 'next' }).tap()
    await expect(page.getByRole('textbox', { name: 'thickness' })).toBeFocused()
    await page.getByRole('button', { name: 'done' }).tap()
    await expect(page.getByRole('group', { name: /^Number pad/ })).toHaveCount(0)
  })

  test('every key is large enough for a thumb', { tag: '@looks' }, async ({ page }) => {
    await page.goto('/rack/new')
    await page.getByLabel('height', { exact: true }).tap()
    for (const key of await page.locator('.pad-key').all()) {
      const box = await key.boundingBox()
      expect(Math.min(box!.width, box!.height)).toBeGreaterThanOrEqual(72)
    }
  })
})

test('search finds by height, fraction, slot and state as it is typed', async ({ page }) => {
  await page.goto('/rack')
  const rows = page.locator('.rack-row'), all = await rows.count()
  await page.getByLabel(/^Find a bar/).fill('35')
  await expect(rows).not.toHaveCount(all)
  for (const height of await rows.locator('.rack-height strong').allTextContents()) expect(height).toMatch(/^35/)
  await page.getByLabel(/^Find a bar/).fill('look first')
  await expect(rows.first()).toContainText('look first')
  await page.getByLabel(/^Find a bar/).fill('no such bar')
  await expect(page.getByText('No bar fits “no such bar”.')).toBeVisible()
})

test('a bar is changed, retired and taken back', async ({ page }) => {
  await page.goto('/rack')
  await page.locator('.rack-row').nth(3).click()
  const address = page.url()
  await page.getByRole('link', { name: 'Change', exact: true }).click()
  await page.getByLabel('name, as marked on it').fill('Blue dot')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Blue dot')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByRole('heading', { level: 1 })).not.toContainText('Blue dot')
  await page.getByRole('button', { name: 'Retire', exact: true }).click()
  await expect(page.getByText(/Retired \d/)).toBeVisible()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByText(/Retired \d/)).toHaveCount(0)
  expect(page.url()).toBe(address)
})

test('once visited, the app opens without the server', { tag: '@away' }, async ({ page, shop }) => {
  await page.goto('/rack')
  await expect(page.locator('.rack-row').first()).toBeVisible()
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready
    if (active!.state !== 'activated') await new Promise((done) => { active!.addEventListener('statechange', done) })
  })
  await page.reload()
  await shop.kill()
  await page.reload()
  await expect(page.locator('.rack-row').first()).toBeVisible()
  await expect(page.getByRole('button', { name: 'Shop away' })).toBeVisible()
  await page.goto('/shop')
  await expect(page.getByRole('heading', { name: 'Shop', exact: true })).toBeVisible()
})

test('every page of the rack is accessible, light and dark', { tag: '@looks' }, async ({ page }) => {
  test.slow()
  await page.goto('/rack')
  const bar = await page.locator('.rack-row').nth(2).getAttribute('href')
  for (const path of ['/rack', bar!, `${bar!}/edit`, '/rack/new', '/rack/import', '/rack/out', '/rack/missing', '/rack/labels', '/rack/care', bar!.replace('/rack/', '/rack/regrind/'), `${bar!}/life`, '/rack/none']) {
    await page.goto(path)
    await page.setViewportSize({ width: path === '/rack' ? 1024 : 700, height: 768 })
    await page.getByRole('heading', { level: 1 }).waitFor()
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      await expectAccessible(page)
    }
  }
})

test('from phone to desktop nothing scrolls sideways, and the actions are large enough', { tag: '@looks' }, async ({ page }) => {
  test.slow()
  await page.goto('/rack')
  const bar = await page.locator('.rack-row').nth(2).getAttribute('href')
  for (const path of ['/rack', bar!, `${bar!}/edit`, '/rack/new', '/rack/import']) {
    await page.goto(path)
    for (const [width, height] of [[360, 640], [390, 844], [800, 1280], [1024, 768], [1920, 1080]] as const) {
      await page.setViewportSize({ width, height })
      await page.locator('.desk-side').waitFor()
      expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
      const heights = await page.locator('.action:visible, .choice-one:visible, .rack-row:visible').evaluateAll((actions) => actions.filter((action) => action.isConnected).map((action) => action.getBoundingClientRect().height))
      expect(heights.length).toBeGreaterThan(0)
      expect(Math.min(...heights)).toBeGreaterThanOrEqual(71.9)
    }
  }
})
