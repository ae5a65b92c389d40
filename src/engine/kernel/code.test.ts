import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { kernelCode } from '../../../scripts/kernel.mjs'

test('the code that is run is what the sources in kernel/ make', async () => {
  expect(readFileSync('src/engine/kernel/code.ts', 'utf8')).toBe(await kernelCode())
}, 20_000)
