import { readdirSync, readFileSync } from 'node:fs'
import { defineConfig } from 'vitest/config'

/** A test that prints, fails. */
const silent = (text: string) => { throw new Error(`a test that prints, fails: ${text}`) }

/** The tests that ask for a shop without saying where it is kept. */
const onBoth = () => readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.test.ts') && readFileSync(`src/${name}`, 'utf8').includes('openExample')).map((name) => `src/${name}`)

export default defineConfig({
  test: {
    onConsoleLog: silent,
    maxWorkers: '100%',
    projects: [
      // Files share a worker: none keeps state, and to load each anew would take as long as the tests.
      { test: { name: 'unit', include: ['src/**/*.test.ts'], environment: 'node', testTimeout: 20_000, pool: 'threads', isolate: false, setupFiles: ['vitest.setup.ts'] } },
      // The same tests on a real PostgreSQL: wherever a shop is kept in memory above, it is kept there.
      { test: { name: 'postgres', include: [...onBoth(), 'e2e/postgres/**/*.test.ts'], environment: 'node', testTimeout: 60_000, pool: 'threads', isolate: false, setupFiles: ['vitest.setup.ts'], globalSetup: ['e2e/postgres/for-tests.ts'] } },
      // The doors as a person meets them: the built command and server as processes.
      { test: { name: 'doors', include: ['e2e/cli/**/*.test.ts', 'e2e/server/**/*.test.ts'], environment: 'node', testTimeout: 60_000 } },
      { test: { name: 'endure', include: ['e2e/endure/**/*.test.ts'], environment: 'node', testTimeout: 3_600_000, fileParallelism: false } },
    ],
  },
})
