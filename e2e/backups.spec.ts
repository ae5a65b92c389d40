import type { Page } from '@playwright/test'
import { readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { ownerIsSet, passphrase } from './owner.ts'
import { expect, expectAccessible, test } from './shop.ts'

const part = (page: Page) => page.locator('section', { has: page.getByRole('heading', { name: 'Backups', exact: true }) })

test.describe('backups, on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 } })

  test('one is made now, listed, looked through, and a spoilt one is said so', async ({ page, shop }) => {
    await page.goto('/shop')
    const section = part(page), folder = join(shop.dataFolder, 'backups')
    await expect(section).toContainText(folder)
    await expect(section).toContainText('There is none yet.')
    await section.getByRole('button', { name: 'Back up now' }).click()
    await expect(section.getByRole('status')).toContainText('was found sound')
    const names = readdirSync(folder)
    expect(names).toHaveLength(1)
    await expect(section.getByRole('listitem')).toContainText(['found sound when it was made'])
    await expect(section).toContainText(`twinrest restore ${names[0]}`)
    await section.getByRole('button', { name: `Look ${names[0]} through` }).click()
    await expect(section.getByRole('listitem')).toContainText(['found sound just now'])
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true)
    await expectAccessible(page)
    writeFileSync(join(folder, names[0]!), 'no database any more')
    await section.getByRole('button', { name: `Look ${names[0]} through` }).click()
    await expect(section.getByRole('listitem')).toContainText(['damaged'])
  })

})

test.describe('backups into a place where nothing can be made', () => {
  test.use({ viewport: { width: 390, height: 844 }, opened: { args: ['--backups', '/dev/null/backups'], before: async () => {} } })

  test('a try that failed is said, to whoever looks later too', async ({ page }) => {
    await page.goto('/shop')
    await part(page).getByRole('button', { name: 'Back up now' }).click()
    await expect(part(page)).toContainText('The last try, just now, made none: The data folder backups cannot be made or written')
    await page.reload()
    await expect(part(page)).toContainText('made none')
    await expectAccessible(page)
  })
})

test.describe('backups, for the owner', () => {
  test.use({ opened: { args: [], before: ownerIsSet } })

  test('are shown once the passphrase was given', async ({ page }) => {
    await page.goto('/shop')
    const section = part(page)
    await section.getByRole('button', { name: 'See the backups' }).click()
    const asked = page.getByRole('dialog', { name: 'For the owner' })
    await asked.getByLabel('owner’s passphrase').fill(passphrase)
    await asked.getByRole('button', { name: 'Go on' }).click()
    await expect(section.getByRole('button', { name: 'Back up now' })).toBeVisible()
  })
})
