import jsQR from 'jsqr'
import { readPdf } from './pdf.ts'
import { expect, expectAccessible, test } from './shop.ts'

type Kept = { readonly bars: readonly { readonly id: string; readonly code: string; readonly slotId: string | null; readonly matesId: string | null }[]; readonly slots: readonly { readonly id: string; readonly code: string; readonly name: string }[] }

/** mm of the strips on the sheet, as docs/labels.md has them, and dots a mm of the photograph. */
const strip = { widthMm: 62, heightMm: 11.5 }, edgeMm = 10, perMm = 8

test('labels of a pair and a slot print on A4 and Letter, and a reader that is not ours reads each of them', async ({ page, shop }) => {
  const { bars, slots } = await (await page.request.get(`${shop.url}/api/shop`)).json() as Kept
  const first = bars.find(({ matesId, slotId }) => matesId !== null && slotId !== null)!, pair = bars.filter(({ matesId }) => matesId === first.matesId), slot = slots.find(({ id }) => id === first.slotId)!
  const wanted = [...pair.map(({ code }) => `TWB${code}`), `TWS${slot.code}`]
  for (const text of wanted) expect(text).toMatch(/^[A-Z0-9]{1,20}$/)
  for (const [size, widthMm, heightMm] of [['A4', 210, 297], ['Letter', 215.9, 279.4]] as const) {
    await page.goto(`/rack/${first.id}`)
    await page.getByRole('link', { name: 'Label' }).click()
    await page.getByText(/^Slots: 0/).click()
    await page.getByRole('checkbox', { name: slot.name, exact: true }).check()
    await page.getByRole('radio', { name: size }).check()
    await expect(page.getByRole('button', { name: `Print ${pair.length + 1} labels` })).toBeVisible()
    await expectAccessible(page)
    const pdf = readPdf(await page.pdf({ preferCSSPageSize: true }))
    expect(pdf.pages).toHaveLength(1)
    expect(pdf.pages[0]!.widthPt).toBeCloseTo((widthMm / 25.4) * 72, 0)
    expect(pdf.pages[0]!.heightPt).toBeCloseTo((heightMm / 25.4) * 72, 0)
    for (const text of wanted) expect(pdf.pages[0]!.text).toContain(text.slice(3))
    expect(pdf.colours.filter((colour) => !['0 0 0', '1 1 1'].includes(colour))).toEqual([])

    // The sheet as it is painted, as a photograph: the code of each strip cut out and read.
    const across = Math.floor((widthMm - 2 * edgeMm) / strip.widthMm), left = (widthMm - across * strip.widthMm) / 2, dots = Math.round(strip.heightMm * perMm)
    const corners = wanted.map((_, at) => [Math.round((left + (at % across) * strip.widthMm) * perMm), Math.round((edgeMm + Math.floor(at / across) * strip.heightMm) * perMm)] as const)
    const photographs = await page.locator('.paper svg').first().evaluate(async (drawn, { wide, high, corners: cut, dots: size }) => {
      const image = new Image(), canvas = document.createElement('canvas'), paint = canvas.getContext('2d', { willReadFrequently: true })!
      image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(drawn))}`
      await image.decode()
      canvas.width = wide; canvas.height = high
      paint.fillStyle = '#fff'; paint.fillRect(0, 0, wide, high)
      paint.drawImage(image, 0, 0, wide, high)
      return cut.map(([x, y]) => Array.from(paint.getImageData(x, y, size, size).data))
    }, { wide: Math.round(widthMm * perMm), high: Math.round(heightMm * perMm), corners, dots })
    const read = photographs.map((pixels) => jsQR(new Uint8ClampedArray(pixels), dots, dots)?.data ?? null)
    expect(read).toEqual(wanted)
  }
})

test('a code opens its bar or slot, scanned into the search, typed by hand, or as an address', async ({ page, shop }) => {
  const { bars, slots } = await (await page.request.get(`${shop.url}/api/shop`)).json() as Kept
  const bar = bars[7]!, slot = slots[3]!
  await page.goto('/rack')
  const search = page.getByLabel(/^Find a bar/)
  for (const text of [`TWB${bar.code}`, ` ${bar.code.slice(0, 4).toLowerCase()}-${bar.code.slice(4).toLowerCase()}`]) {
    await search.fill(text)
    await search.press('Enter')
    await expect(page).toHaveURL(`${shop.url}/rack/${bar.id}`)
    await expect(search).toHaveValue('')
    await page.goto('/rack')
  }
  await search.fill(`TWS${slot.code}`)
  await search.press('Enter')
  await expect(page).toHaveURL(`${shop.url}/rack/slot/${slot.id}`)
  await expect(page.getByRole('heading', { level: 1 })).toContainText(slot.name)
  await expectAccessible(page)
  await page.goto(`/c/${bar.code}`)
  await expect(page).toHaveURL(`${shop.url}/rack/${bar.id}`)
  await page.goto(`/c/${slot.code}`)
  await expect(page).toHaveURL(`${shop.url}/rack/slot/${slot.id}`)
  await page.goto('/c/ZZZZZZZZ')
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No label of this shop')
})

test('the care card and a line of life are pages of black lettering', async ({ page, shop }) => {
  const { bars } = await (await page.request.get(`${shop.url}/api/shop`)).json() as Kept
  for (const [path, says] of [['/rack/care', 'Never stamp, punch or engrave a ground face.'], [`/rack/${bars[0]!.id}/life`, 'Came into the rack']] as const) {
    await page.goto(path)
    await page.locator('.paper svg').first().waitFor()
    const pdf = readPdf(await page.pdf({ preferCSSPageSize: true }))
    expect(pdf.pages).toHaveLength(1)
    expect(pdf.pages[0]!.text).toContain(says)
    expect(pdf.colours.filter((colour) => !['0 0 0', '1 1 1'].includes(colour))).toEqual([])
    await expectAccessible(page)
  }
})
