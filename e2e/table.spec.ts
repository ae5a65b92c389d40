import type { Page } from '@playwright/test'
import { readPdf } from './pdf.ts'
import { expect, expectAccessible, test } from './shop.ts'

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true })
const answer = (page: Page) => page.getByRole('region', { name: 'Answer' })

/** A plate of 100 × 120 × 20 with a through hole of 10, 15 from the near edge. */
async function plate(page: Page): Promise<void> {
  await page.goto('/setup/table')
  for (const [name, text] of [
    ['across of the part', '100'], ['along of the part', '120'], ['height of the part', '20'], ['⌀ of hole 1', '10'], ['from near edge of hole 1', '15'], ['from left end of hole 1', '60'],
  ] as const) await field(page, name).fill(text)
}

// By hand: the hole spans 10 to 20; 0.5 of air leaves 9.5 beside it, 2 of air leaves 8.
test('on the drill press bars at the edge are at most 9.5 thick, 8 where 2 of air are wished, straps above them', async ({ page }) => {
  await plate(page)
  await expect(answer(page).getByRole('heading', { level: 2 })).toHaveText('Bars at most 9.5 mm thick along the edges')
  await field(page, 'thickness of a bar').fill('9.5')
  await expect(answer(page)).toContainText('Both bars are clear of every hole.')
  await expect(answer(page)).toContainText('Every strap presses above a bar.')
  await field(page, 'clear of holes at least').fill('2')
  await expect(answer(page).getByRole('heading', { level: 2 })).toHaveText('Bars at most 8 mm thick along the edges')
  await expect(answer(page)).toContainText('Bar 1 stands in the way of hole 1.')
  await field(page, 'thickness of a bar').fill('8')
  await expect(answer(page)).toContainText('Both bars are clear of every hole.')
  await field(page, '1, from near edge of the strap').fill('50')
  await expect(answer(page)).toContainText('Strap 1 presses beside the bars')
  await expect(page.getByRole('region', { name: 'Cautions' })).toContainText('Every strap level, above a bar')
  for (const colorScheme of ['light', 'dark'] as const) { await page.emulateMedia({ colorScheme }); await expectAccessible(page) }
})

test('a pair of the rack that is thin and high enough is taken at one tap', async ({ page }) => {
  await plate(page)
  await page.getByRole('button', { name: /, slot .*: 8 thick/ }).first().click()
  await expect(field(page, 'thickness of a bar')).toHaveValue('8')
  await expect(answer(page)).toContainText('Both bars are clear of every hole.')
})

// By hand: half of 20 is 10; 0.5 below the top is 19.5; along the travel both ends come first.
test('on the magnetic chuck bars lie flat, at least half as high as the part and lower than it, ends of the travel first', async ({ page }) => {
  await page.goto('/setup/chuck')
  for (const [name, text] of [['height of the part', '20'], ['along of the part', '80'], ['across of the part', '40']] as const) await field(page, name).fill(text)
  await expect(answer(page).getByRole('heading', { level: 2 })).toHaveText('Bars 10 to 19.5 mm thick, lying flat')
  await expect(answer(page)).toContainText('left end and right end, then front and back')
  await expect(answer(page)).toContainText('Holding force: not computed.')
  await page.getByRole('radio', { name: 'across it' }).check({ force: true })
  await expect(answer(page)).toContainText('front and back, then left end and right end')
  await expectAccessible(page)
})

test('fillers: sizes of the rack that fill a gap, each way said once', async ({ page }) => {
  await page.goto('/setup/fill')
  await field(page, 'gap to fill').fill('24')
  const ways = answer(page).getByRole('listitem')
  await expect(ways.first()).toContainText('24 in all, as wished')
  const said = await ways.allTextContents()
  expect(new Set(said).size).toBe(said.length)
  await expectAccessible(page)
})

test('six sides of a block: one pair for the long faces, both orders, each face with what lies where', async ({ page }) => {
  await page.goto('/setup/block')
  for (const [name, text] of [['length raw', '82'], ['width raw', '52'], ['height raw', '32'], ['length finished', '80'], ['width finished', '50'], ['height finished', '30']] as const) await field(page, name).fill(text)
  await expect(answer(page).getByRole('heading', { level: 2 })).toContainText('One pair for the long faces')
  const faces = async () => (await page.locator('.beside-step h3').allTextContents()).map((text) => /Face (.)/.exec(text)![1]).join('')
  expect(await faces()).toBe('ABCDEF')
  await page.getByRole('radio', { name: 'roll round' }).check({ force: true })
  await expect.poll(faces).toBe('ABDCEF')
  await expectAccessible(page)
})

// By hand: bars (8−2)/2 = 3, block (8−4)/2 = 2, bed (2+4)/2 = 3, tightening 20−8 = 12.
test('four readings on a ground block tell who is guilty and fill the record of the vise', async ({ page }) => {
  await page.goto('/shop')
  await page.getByRole('link', { name: /^Mill 1/ }).first().click()
  await page.getByRole('link', { name: 'Measure it' }).click()
  for (const [name, text] of [['as it is', '8'], ['bars exchanged', '2'], ['block turned', '4'], ['tightened', '20']] as const) await page.getByRole('textbox', { name: new RegExp(`^shows, µm .*${name}`) }).fill(text)
  await field(page, 'between both places').fill('50')
  await field(page, '± µm, one reading').fill('1')
  await expect(answer(page)).toContainText(/goes up by 12 µm.*higher by 3 µm/)
  await page.getByRole('button', { name: 'Keep bed and lift with this vise' }).click()
  const known = page.getByRole('region', { name: 'Known so far' })
  await expect(known).toContainText('+12 µm over 50')
  await page.getByRole('radio', { name: 'one thing at a time' }).check({ force: true })
  await field(page, '± µm, one reading').fill('1')
  await field(page, 'higher by, µm').fill('18')
  await page.getByRole('button', { name: 'Keep bed in the row' }).click()
  await expect(known).toContainText('+18 µm')
  await expect(known).toContainText('+12 µm over 50')
  for (const colorScheme of ['light', 'dark'] as const) { await page.emulateMedia({ colorScheme }); await expectAccessible(page) }
})

/** Pages, points and colours of what is printed, and what was kept of it. */
async function printed(page: Page) {
  const told = page.waitForRequest((request) => request.url().endsWith('/api/told'))
  await page.getByRole('button', { name: 'Print sheet' }).click()
  const pdf = readPdf(await page.pdf({ preferCSSPageSize: true }))
  return { ...pdf, text: pdf.pages.map(({ text }) => text).join('\n').replace(/\s+/g, ' '), told: (await told).postDataJSON() as object, answered: (await (await told).response())?.status() }
}

test('the sheet of the table has bars with slots, straps, order and cautions on one black page, and is kept as told', async ({ page }) => {
  await plate(page)
  await field(page, 'bar height').fill('3')
  await field(page, 'thickness of a bar').fill('8')
  await expect(answer(page)).toContainText('too low for what comes out below')
  await expect(page.getByRole('button', { name: 'Print sheet' })).toBeDisabled()
  await page.getByRole('button', { name: /, slot .*: 8 thick/ }).first().click()
  const slot = /slot (\S+):/.exec(await answer(page).textContent() ?? '')![1]!
  await page.getByRole('textbox', { name: 'part number' }).fill('Plate 12')
  const { pages, colours, text, told, answered } = await printed(page)
  expect(pages.map(({ widthPt, heightPt }) => [Math.round(widthPt), Math.round(heightPt)])).toEqual([[595, 842]])
  for (const said of ['Plate 12', `slot ${slot}`, 'Scale 1 : ', 'above a bar', '15 from the near edge, 60 from the left end', 'Every strap level', 'Not computed']) expect(text).toContain(said)
  expect(colours.filter((colour) => !/^(0 0 0|1 1 1)$/.test(colour))).toEqual([])
  expect(told).toMatchObject([{ what: 'table sheet', setupId: null, checkId: null, jobId: null, data: { foot: { part: { value: 'Plate 12' } } } }])
  expect(answered).toBe(200)
  await page.getByRole('button', { name: 'Back to the table' }).click()
  await expect(field(page, 'across of the part')).toHaveValue('100')
})

test('the sheet of the chuck has the sides in their order with bar, slot and trust', async ({ page }) => {
  await page.goto('/setup/chuck')
  for (const [name, text] of [['height of the part', '20'], ['along of the part', '80'], ['across of the part', '40']] as const) await field(page, name).fill(text)
  await expect(answer(page).getByRole('listitem')).toContainText([/^1 left end: .*slot/, /^2 right end: .*slot/, /^3 front: /, /^4 back: /])
  const { pages, text, told, answered } = await printed(page)
  expect(pages).toHaveLength(1)
  for (const said of ['1 left end', '2 right end', '3 front', '4 back', 'trusted', 'Demagnetise', 'Not computed: holding force']) expect(text).toContain(said)
  expect(told).toMatchObject([{ what: 'chuck sheet', setupId: null }])
  expect(answered).toBe(200)
})

for (const path of ['table', 'chuck', 'fill', 'block', 'day']) {
  test(`/setup/${path} fits a phone and a tablet held upright`, { tag: '@looks' }, async ({ page }) => {
    for (const [width, height] of [[800, 1280], [390, 844]] as const) {
      await page.setViewportSize({ width, height })
      await page.goto(`/setup/${path}`)
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
      await expectAccessible(page)
    }
  })
}
