import type { Locator, Page } from '@playwright/test'
import { expect, expectAccessible, test } from './shop.ts'

/** The answer's own parts, by what they are called on the screen. */
const answer = (page: Page) => page.getByRole('region', { name: 'Answer', exact: true })
const figure = (page: Page) => answer(page).getByRole('heading', { level: 1 })
const more = (page: Page) => page.getByRole('region', { name: 'More of the answer' })
const row = (page: Page, text: RegExp): Locator => more(page).getByRole('button').filter({ hasText: text })
const numbers = (page: Page) => page.locator('.setup-figures')
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true })
const height = (page: Page) => field(page, 'height of the part')

/** How a person gives texts to the screen: one into each field in turn, going on after each. */
type Hand = {
  readonly name: string
  readonly touch: boolean
  readonly press: (what: Locator) => Promise<void>
  readonly give: (page: Page, ...texts: readonly string[]) => Promise<void>
}

const keyboard: Hand = {
  name: 'by keyboard', touch: false,
  press: (what) => what.press('Enter'),
  give: async (page, ...texts) => {
    for (const text of texts) {
      await page.keyboard.type(text)
      await page.keyboard.press('Enter')
    }
  },
}

const padNames: { readonly [letter: string]: string } = { '.': 'point', ',': 'comma', '/': 'over', ' ': 'space', 'm': 'millimetres, mm', '-': 'minus' }
const numberPad: Hand = {
  name: 'by the number pad', touch: true,
  press: (what) => what.tap(),
  give: async (page, ...texts) => {
    const pad = page.getByRole('group', { name: /^Number pad/ })
    for (const text of texts) {
      for (const letter of text.replace(/ ?mm$/, 'm')) await pad.getByRole('button', { name: padNames[letter] ?? letter, exact: true }).tap()
      await pad.getByRole('button', { name: 'next', exact: true }).tap()
    }
  },
}

const { give } = keyboard

/** Height, off the top, between jaws, along, from the first field on. */
async function givePart(page: Page, ...texts: readonly string[]): Promise<void> {
  await page.goto('/setup')
  await height(page).focus()
  await give(page, ...texts)
}

/** A hole by its diameter, its distance from the fixed jaw and from the left end. */
async function giveHole(page: Page, ...texts: readonly string[]): Promise<void> {
  await page.getByRole('button', { name: 'Add a hole or another cut' }).press('Enter')
  await give(page, ...texts)
}

async function whyNot(page: Page, asked: string): Promise<Locator> {
  await field(page, 'why not this height').fill(asked)
  return more(page).getByRole('list', { name: 'Answers to why not' })
}

async function takeVise(page: Page, name: RegExp): Promise<void> {
  await page.getByRole('button', { name: /^Jaws .* high\. Change/ }).click()
  await page.getByRole('button', { name }).click()
}

for (const hand of [keyboard, numberPad]) {
  test.describe(hand.name, () => {
    test.use({ hasTouch: hand.touch })

    /** The first number: the field is come to as this hand does it. */
    async function begin(page: Page, ...texts: readonly string[]): Promise<void> {
      await (hand.touch ? height(page).tap() : height(page).focus())
      await hand.give(page, ...texts)
    }
    async function giveHole(page: Page, ...texts: readonly string[]): Promise<void> {
      await hand.press(page.getByRole('button', { name: 'Add a hole or another cut' }))
      await hand.give(page, ...texts)
    }

    test('two numbers, and the pair, its slot, grip and clearance stand there', async ({ page }) => {
      await page.goto('/setup')
      await expect(answer(page)).toContainText('Height of the part, then what comes off the top')
      await begin(page, '19', '6')
      await expect(figure(page)).toHaveText('35 pair C')
      await expect(answer(page)).toContainText('B4')
      for (const said of [/10\.0.*grip|grip.*10\.0/s, /above jaws.*9\.0/s, /clear of jaws.*3\.0/s]) await expect(numbers(page)).toHaveText(said)
      await expect(more(page)).toContainText('Not given: between jaws, along, holes.')
      if (hand.touch) {
        const [padBox, answerBox] = [await page.getByRole('group', { name: /^Number pad/ }).boundingBox(), await answer(page).boundingBox()]
        expect(padBox!.y).toBeGreaterThanOrEqual(answerBox!.y + answerBox!.height)
      }
      await expect(await whyNot(page, '30')).toContainText('30pair BCutter 2 below the jaw tops.')
    })

    test('two holes over the bar at the fixed jaw: short bars between them, the bar inboard from 10.75, a drill bar', async ({ page }) => {
      await page.goto('/setup')
      await begin(page, '19', '6', '38', '60')
      await giveHole(page, '8.5', '6', '10')
      if (hand.touch) await page.getByRole('group', { name: /^Number pad/ }).getByRole('button', { name: 'done', exact: true }).tap()
      await hand.press(page.getByRole('button', { name: /^× 2 along/ }))
      await expect(page.getByRole('button', { name: 'hole 2: ⌀ 8.5, 6 from jaw. Change' })).toBeVisible()
      await hand.press(page.getByRole('button', { name: 'Done' }))
      await expect(figure(page)).toHaveText('35 pair S')
      await expect(answer(page)).toContainText('At the jaws.')
      await hand.press(row(page, /^35pair C/))
      await expect(answer(page)).toContainText('Inboard.')
      await expect(answer(page)).toContainText('stands 10.75 off it: two 8.5 holes, 6 from the jaw, would meet it where it belongs')
      await hand.press(more(page).getByRole('button', { name: /more$/ }))
      await expect(row(page, /^34pair X/)).toContainText('cut into, beater')
    })

    test('14 between the jaws: 8s meet, 6.35s leave 1.3, 6s serve', async ({ page }) => {
      await page.goto('/setup')
      await begin(page, '19', '6', '14')
      await expect(figure(page)).toHaveText('35 pair T6')
      await expect(await whyNot(page, '35')).toContainText('pair CToo thick: two of 8 meet under 14.')
      await expect(await whyNot(page, '34.9')).toContainText('Too thick: two of 6.35 leave 1.3 between them, under 2.')
    })

    test('inches and millimetres in one part, and the answer in both systems', async ({ page }) => {
      await page.goto('/shop')
      await page.getByRole('radio', { name: 'inch' }).check()
      await page.goto('/setup')
      await takeVise(page, /^Mill 2/)
      await begin(page, '7/8', '3,0 mm', '2', '3')
      await hand.press(page.getByRole('button', { name: /^At least/ }))
      await hand.give(page, '1/2', '1 mm')
      await expect(figure(page)).toHaveText('1 1/8 pair I6')
      const heights = page.locator('.setup-heights')
      for (const said of ['26.225 mm', '31.75 mm', '1 1/4']) await expect(heights).toContainText(said)
      await expect(row(page, /^1 1\/4pair I7/)).toContainText('grip 0.500')
      await expect(row(page, /^1pair I5/)).toContainText('clear of the jaws')
      await expect(numbers(page)).toContainText('mm')
    })

    test('a 16 drill through on bars of 5: 6.307 below the part, 1.307 into the bed, 2.307 short of the air', async ({ page, shop }) => {
      const csv = 'height,thickness,length,mates,slot\n5,5,150,Z,Z9\n5,5,150,Z,Z9\n'
      const taken = await page.request.post(`${shop.url}/api/rack/import`, { data: { id: 'file-1', csv, unit: 'mm' }, headers: { origin: shop.url } })
      expect(taken.ok(), await taken.text()).toBe(true)
      await page.goto('/setup')
      await takeVise(page, /^Mill 2/)
      await begin(page, '40', '0', '60', '90')
      await giveHole(page, '16', '30', '45')
      await expect(await whyNot(page, '5')).toContainText('pair ZTip 6.307 below the part, 1.307 into the bed, 2.307 short of the wished air.')
    })
  })
}

test('a slot milled right through over a bar is seen: the bar at that jaw moves inboard', async ({ page }) => {
  await givePart(page, '25', '1', '50', '70')
  await page.getByRole('button', { name: 'Add a hole or another cut' }).click()
  await page.getByRole('radio', { name: 'slot' }).check()
  await page.getByRole('radio', { name: 'stays between the jaws' }).check()
  await page.getByRole('radio', { name: 'place given' }).check()
  await field(page, 'deep of slot 1').fill('25')
  await field(page, 'along, from of slot 1').fill('-5')
  await field(page, 'along, to of slot 1').fill('75')
  await field(page, 'across, from of slot 1').fill('20')
  await field(page, 'across, to of slot 1').fill('26')
  await expect(answer(page)).toContainText('At the jaws.')
  await field(page, 'across, from of slot 1').fill('42')
  await field(page, 'across, to of slot 1').fill('48')
  await expect(answer(page)).toContainText('Inboard.')
  await expect(answer(page)).toContainText('cut 1 would meet it where it belongs')
  await field(page, 'across, from of slot 1').fill('4')
  await field(page, 'across, to of slot 1').fill('46')
  await expect(await whyNot(page, '25')).toContainText('A hole or cut would meet a bar (cut 1): no place is left for it.')
})

test('an end squared past the jaw refuses the long bar under it', async ({ page }) => {
  await givePart(page, '30', '2', '45', '100')
  await expect(await whyNot(page, '25')).toContainText('It serves')
  await page.getByRole('button', { name: 'Add a hole or another cut' }).click()
  await page.getByRole('radio', { name: 'end', exact: true }).check()
  await field(page, 'to come off of end 1').fill('2')
  await expect(figure(page)).toHaveText('25 pair R')
  await expect(await whyNot(page, '25')).toContainText('It reaches into the end that is cut: take shorter bars.')
})

test('two bars marked alike but never measured stand behind a measured pair', async ({ page }) => {
  await givePart(page, '19', '6')
  await expect(figure(page)).toHaveText('35 pair C')
  await expect(answer(page)).toContainText('this is measured, that is only marked')
  const rows = await more(page).locator('.setup-row').allInnerTexts()
  expect(rows.some((text) => /^35\s+pair W/.test(text))).toBe(true)
  await row(page, /^35pair W/).click()
  await expect(numbers(page)).toContainText('match, not measured')
  await expect(more(page)).toContainText('sizes only marked, so how well they match is not known')
})

test.describe('what is wrong', () => {
  test('is marked quietly while it is half typed, and said once the field is left', async ({ page }) => {
    await givePart(page, '19', '6')
    await expect(figure(page)).toHaveText('35 pair C')
    await height(page).fill('1 3/')
    await expect(figure(page)).toHaveText('35 pair C')
    await expect(page.locator('[data-half]')).toHaveCount(1)
    await page.keyboard.press('Tab')
    await expect(answer(page)).toContainText('‘1 3/’'.replace(/[‘’]/g, "'"))
    await expect(height(page)).toHaveAttribute('aria-invalid', 'true')
    await expect(page.locator('.setup-room svg')).toBeVisible()
  })

  const wrong: readonly (readonly [field: string, text: string, said: RegExp])[] = [
    ['height of the part', 'abc', /Height: 'abc' is no length/],
    ['height of the part', '-19', /Height: −19 given; it must be more than 0/],
    ['height of the part', '0', /Height: 0 given; it must be more than 0/],
    ['height of the part', 'NaN', /Height: 'NaN' is no length/],
    ['height of the part', '1e308', /Height: '1e308' is no length/],
    ['height of the part', '9999999', /Height: '9999999' is too large/],
    ['off the top', '-1', /Off the top: −1 given; it cannot be below 0/],
    ['off the top', '20', /Off the top: 20 given, the part is 19 high/],
    ['off the top', '1,000.5', /Off the top: .*two decimal marks/],
    ['between jaws', '151', /Between jaws: the part is 151 .* opens 150/],
    ['between jaws', '0', /Between jaws: 0 given; it must be more than 0/],
    ['along the jaws', '1/0', /Along jaws: .*divides by 0/],
    ['along the jaws', '60 furlong', /Along jaws: the unit of '60 furlong' is not known/],
  ]
  test('is said with its field and what is needed, in every field of the part', async ({ page }) => {
    await givePart(page, '19', '6', '38', '60')
    for (const [name, text, said] of wrong) {
      const input = field(page, name), before = await input.inputValue()
      await input.fill(text)
      await input.blur()
      await expect(answer(page), `${name} ${text}`).toHaveText(said)
      await expect(input).toHaveAccessibleDescription(said)
      await input.fill(before)
      await expect(figure(page)).toHaveText('35 pair C')
    }
    await height(page).fill('')
    await expect(answer(page)).toContainText('Height of the part, then what comes off the top')
  })

  test('is said of cuts and wishes: a hole beside the part, one that breaks through, a wish below 0', async ({ page }) => {
    await givePart(page, '19', '6', '38', '60')
    await giveHole(page, '8.5', '39')
    await expect(answer(page)).toContainText('Hole 1, distance from the jaw: at 39 the middle of the hole lies beside the part')
    await field(page, 'from fixed jaw of hole 1').fill('19')
    await field(page, 'from left end of hole 1').fill('-1')
    await expect(answer(page)).toContainText('beside the part')
    await field(page, 'from left end of hole 1').fill('30')
    await page.getByRole('radio', { name: 'blind' }).check()
    await field(page, 'deep of hole 1').fill('18')
    await expect(answer(page)).toContainText('comes out below')
    await field(page, 'deep of hole 1').fill('10')
    await field(page, 'point angle of hole 1').fill('200')
    await expect(answer(page)).toContainText('at most 180 degrees')
    await page.getByRole('button', { name: 'Remove' }).click()
    await page.getByRole('button', { name: /^At least/ }).click()
    await field(page, 'grip').fill('-1')
    await expect(answer(page)).toContainText('a wish cannot be below 0')
  })
})

test('typing at 30 ms a key loses nothing, and a reload brings all of it back', async ({ page }) => {
  await page.goto('/setup')
  await height(page).focus()
  for (const text of ['22.225', '3,175', '38.1', '63.5']) {
    await page.keyboard.type(text, { delay: 30 })
    await page.keyboard.press('Enter')
  }
  await giveHole(page, '8', '6')
  const first = await figure(page).innerText()
  await page.reload()
  for (const [name, text] of [['height of the part', '22.225'], ['off the top', '3,175'], ['between jaws', '38.1'], ['along the jaws', '63.5'], ['⌀ of hole 1', '8']] as const) await expect(field(page, name)).toHaveValue(text)
  expect(await figure(page).innerText()).toBe(first)
})

test('with the server away the answer still comes, and the pair taken then is in the shop later', { tag: '@away' }, async ({ page, shop }) => {
  await page.goto('/setup')
  await expect(figure(page)).toBeVisible()
  await shop.kill()
  await height(page).focus()
  await give(page, '19', '6')
  await expect(figure(page)).toHaveText('35 pair C')
  await page.getByRole('button', { name: 'Use this pair' }).click()
  await expect(page.getByText('35 pair C is in Mill 1, 125 mm; the setup is kept.')).toBeVisible()
  await shop.start()
  await page.reload()
  await expect(page.getByRole('button', { name: 'Saved in the shop' })).toBeVisible({ timeout: 20_000 })
  const snapshot = await (await page.request.get(`${shop.url}/api/shop`)).json() as { bars: { id: string; where: { at: string } }[] }
  expect(snapshot.bars.filter(({ where }) => where.at === 'vise').map(({ id }) => id)).toEqual(['demo-C-1', 'demo-C-2'])
})

test.describe('with a thumb', { tag: '@looks' }, () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } })

  test('the pad covers neither the height asked about nor the first answer to it', async ({ page }) => {
    await page.goto('/setup')
    await height(page).tap()
    await numberPad.give(page, '19', '6')
    await page.getByRole('button', { name: 'done', exact: true }).tap()
    await field(page, 'why not this height').tap()
    for (const digit of '30') await page.getByRole('button', { name: digit, exact: true }).tap()
    const pad = (await page.getByRole('group', { name: /^Number pad/ }).boundingBox())!
    for (const seen of [field(page, 'why not this height'), page.getByRole('list', { name: 'Answers to why not' }).getByRole('listitem').first()]) {
      const box = (await seen.boundingBox())!
      expect(box.y + box.height).toBeLessThanOrEqual(pad.y)
    }
  })

  test('the drawing shows no bars of an earlier answer while there is none', async ({ page }) => {
    await page.goto('/setup')
    await height(page).tap()
    await numberPad.give(page, '19', '6')
    await expect(page.locator('.setup-room svg')).toContainText('grip 10')
    await field(page, 'off the top').tap()
    await numberPad.give(page, '20')
    await expect(answer(page)).toContainText('No answer yet')
    await expect(page.locator('.setup-room svg')).not.toContainText('grip')
    await expect(page.locator('.setup-room svg')).not.toContainText('35 C')
  })
})

test('a sheet without a height is not saved', async ({ page }) => {
  await page.goto('/setup')
  await page.getByRole('button', { name: 'Save / open' }).click()
  await expect(page.getByRole('button', { name: 'Save setup' })).toBeDisabled()
  await expect(page.getByText('Nothing to save yet: the part has no height.')).toBeVisible()
})

test('a question that nothing serves is written down once', async ({ page }) => {
  const unserved: unknown[] = []
  page.on('request', (request) => { if (request.url().endsWith('/api/unserved')) unserved.push(...request.postDataJSON() as unknown[]) })
  await givePart(page, '19', '16')
  await expect(answer(page)).toContainText('No pair serves')
  await expect(answer(page)).toContainText('Make a pair of 43 to 43.2')
  await expect.poll(() => unserved.length, { timeout: 15_000 }).toBe(1)
  await height(page).fill('19.0')
  await height(page).blur()
  await page.waitForTimeout(4000)
  expect(unserved).toHaveLength(1)
  expect(unserved[0]).toMatchObject({ viseId: 'demo-vise-1', lowMm: 43 })
})

test('where nothing serves, an order in Make is begun with the window, the use and the jaws filled in', async ({ page }) => {
  await givePart(page, '19', '16')
  await answer(page).getByRole('button', { name: 'Make a pair of 43 to 43.2' }).click()
  await expect(page).toHaveURL(/\/make\/order\//)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('43 (43 to 43.2)')
  await expect(page.getByText('As good: any from 43 to 43.2.')).toBeVisible()
  await expect(page.getByRole('textbox', { name: 'heights, a space between' })).toHaveValue('43')
  await expect(page.getByRole('radio', { name: 'milling', exact: true })).toBeChecked()
  await expect(page.getByRole('heading', { name: 'Ways to make them' })).toBeVisible()
})

test('same as last time opens what was done; it can be kept, copied, called otherwise, retired and taken back', async ({ page }) => {
  await page.goto('/setup')
  await page.getByRole('button', { name: /^Narrow rib/ }).click()
  await expect(field(page, 'between jaws')).toHaveValue('14')
  await expect(figure(page)).toHaveText('35 pair T6')
  await page.getByRole('button', { name: 'Save / open' }).click()
  const sheet = page.getByRole('dialog')
  await sheet.getByLabel('Title', { exact: true }).fill('Rib, second side')
  await sheet.getByLabel('Operation', { exact: true }).fill('face')
  await page.keyboard.press('Escape')
  await field(page, 'between jaws').fill('15')
  await page.getByRole('button', { name: 'Save / open' }).click()
  await sheet.getByRole('button', { name: 'Save setup' }).click()
  await page.getByRole('button', { name: 'Save / open' }).click()
  await sheet.getByRole('button', { name: 'Start new' }).click()
  await expect(height(page)).toHaveValue('')
  await page.getByRole('button', { name: 'Save / open' }).click()
  await expect(sheet.getByRole('button', { name: /^Narrow rib, face/ })).toBeVisible()
  await sheet.getByRole('button', { name: 'Copy Rib, second side, face' }).click()
  await expect(field(page, 'between jaws')).toHaveValue('15')
  await page.getByRole('button', { name: 'Save / open' }).click()
  await expect(sheet.getByLabel('Title', { exact: true })).toHaveValue('Rib, second side, copy')
  await sheet.getByRole('button', { name: 'Rename Rib, second side, face' }).click()
  await sheet.getByLabel('New name').fill('Rib B')
  await sheet.getByRole('button', { name: 'Keep' }).click()
  await expect(sheet.getByRole('button', { name: /^Rib B, face/ })).toBeVisible()
  await sheet.getByRole('button', { name: 'Retire Rib B, face' }).click()
  await expect(sheet.getByRole('button', { name: /^Rib B, face/ })).toBeHidden()
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('button', { name: 'Save / open' }).click()
  await expect(sheet.getByRole('button', { name: /^Rib B, face/ })).toBeVisible()
})

test('a part kept in inches says so in a shop of millimetres', async ({ page }) => {
  await page.goto('/setup')
  await page.getByRole('button', { name: 'Save / open' }).click()
  await page.getByRole('dialog').getByRole('button', { name: /^Inch block, 2 × 3/ }).click()
  await expect(page.getByText('typed in')).toBeVisible()
  await expect(field(page, 'height of the part, in inches')).toHaveValue('7/8')
})

test('the sheet is printed on one page, and what was told is kept', async ({ page, shop }) => {
  await givePart(page, '19', '6', '38', '60')
  await giveHole(page, '8.5', '6', '10')
  await page.getByRole('button', { name: 'Print sheet' }).click()
  await expect(page).toHaveURL(/\/setup\/print\//)
  const paper = page.getByRole('region', { name: 'Page, A4' })
  await expect(paper).toContainText('Cautions')
  await expect(paper).toContainText(/not computed/i)
  await expect(paper).toContainText('Take the handle off the vise')
  const told = page.waitForRequest((request) => request.url().endsWith('/api/told'))
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
  expect((await told).postDataJSON()).toMatchObject([{ what: 'setup sheet' }])
  const pdf = await page.pdf({ preferCSSPageSize: true })
  expect(pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1)
  const id = page.url().split('/').at(-1)!
  const history = await (await page.request.get(`${shop.url}/api/history/setup/${id}`)).text()
  expect(history).toContain('told')
})

test.describe('every number shows its sum', () => {
  test('grip, above the jaws, clear of the jaws, match and both ends of the window', async ({ page }) => {
    await givePart(page, '19', '6', '38', '60')
    await page.getByText('Show the sum').click()
    const sums = page.locator('.setup-sums')
    for (const said of [/45 − 34\.998 and 19 = 10\.002/, /34\.998 \+ 19 − 45 = 8\.998/, /8\.998 − 6 = 2\.998/, /45 \+ 6 \+ 1 − 19 = 33/, /45 − 7\.8 = 37\.2/, /= 1\.3 µm/]) await expect(sums).toHaveText(said)
  })
})

for (const [size, width, tall] of [['tablet', 1024, 768], ['phone', 390, 844]] as const) {
  for (const scheme of ['light', 'dark'] as const) {
    test.describe(`${size}, ${scheme}`, () => {
      test.use({ viewport: { width, height: tall }, colorScheme: scheme })

      test('is open to all, from the empty sheet to what is refused', { tag: '@looks' }, async ({ page }) => {
        await page.goto('/setup')
        await expect(answer(page)).toBeVisible()
        await expectAccessible(page)
        await height(page).focus()
        await give(page, '19', '6', '38', '60')
        await giveHole(page, '8.5', '6', '10')
        await expectAccessible(page)
        await page.getByRole('button', { name: 'Done' }).click()
        await page.getByRole('button', { name: /^At least/ }).click()
        await expectAccessible(page)
        await page.getByRole('button', { name: 'Done' }).click()
        await field(page, 'off the top').fill('16')
        await expectAccessible(page)
        await field(page, 'off the top').fill('60')
        await field(page, 'off the top').blur()
        await expectAccessible(page)
        expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0)
        if (size === 'tablet') expect(await page.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBe(0)
        await page.getByRole('button', { name: 'Save / open' }).click()
        await expectAccessible(page)
        await page.keyboard.press('Escape')
        for (const [across, up] of [[768, 1024], [768, 954], [800, 600], [932, 430]] as const) {
          await page.setViewportSize({ width: across, height: up })
          await expect.poll(() => overlapping(page), `${across} × ${up}`).toEqual([])
        }
      })
    })
  }
}

/** Pairs of fields of the part that lie on each other. */
function overlapping(page: Page): Promise<readonly string[]> {
  return page.locator('.setup-fields .field, .setup-fields button').evaluateAll((all) => {
    const boxes = all.map((one) => ({ name: one.textContent, box: one.getBoundingClientRect() }))
    return boxes.flatMap((a, at) => boxes.slice(at + 1).flatMap((b) => (a.box.left + 1 < b.box.right && b.box.left + 1 < a.box.right && a.box.top + 1 < b.box.bottom && b.box.top + 1 < a.box.bottom ? [`${a.name} on ${b.name}`] : [])))
  })
}
