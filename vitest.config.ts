import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    projects: [
      { test: { name: 'unit', include: ['src/**/*.test.ts', 'src/**/*.test.tsx'], environment: 'node', testTimeout: 20_000 } },
      { test: { name: 'endure', include: ['e2e/endure/**/*.test.ts'], environment: 'node', testTimeout: 600_000, fileParallelism: false } },
    ],
    onConsoleLog: (text) => { throw new Error(`a test that prints, fails: ${text}`) },
    benchmark: { include: ['bench/**/*.bench.ts'] },
  },
})
