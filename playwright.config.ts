import { defineConfig, devices } from '@playwright/test'

const executablePath = process.env['PW_CHROMIUM'] || undefined

/** Each story starts a shop of its own (e2e/shop.ts), so they may run in any order and side by side. */
export default defineConfig({
  testDir: 'e2e',
  testMatch: '*.spec.ts',
  // A shop on PostgreSQL is backed up by the database's own tools: what the app says of its own is not to be had there.
  testIgnore: process.env['TWINREST_STORIES_ON'] === 'postgres' ? 'backups.spec.ts' : [],
  fullyParallel: true,
  // One more than two processors: stories wait for each other's clocks as much as they work.
  workers: 3,
  timeout: 60_000,
  forbidOnly: true,
  outputDir: 'node_modules/.cache/stories',
  use: {
    ...devices['Desktop Chrome'],
    viewport: { width: 1024, height: 768 },
    locale: 'en-GB',
    timezoneId: 'UTC',
    // A page that still glides to its place has fields half under its head.
    contextOptions: { reducedMotion: 'reduce' },
    // A trace of every step costs a third of the time: ask for one where a story fails.
    trace: process.env['TWINREST_TRACE'] ? 'retain-on-failure' : 'off',
    launchOptions: { ...(executablePath ? { executablePath } : {}), args: ['--disable-quic', '--disable-sync', '--disable-background-networking'] },
  },
})
