import { spawnSync } from 'node:child_process'
import { resolve } from 'node:path'
import { expect, test } from 'vitest'

test('from the checkout npx finds the command', () => {
  const done = spawnSync('npx', ['--no-install', 'twinrest', '--help'], { cwd: resolve(import.meta.dirname, '../..'), encoding: 'utf8' })
  expect(done.stderr).toBe('')
  expect(done.stdout).toContain('Which bars of the rack carry this part')
  expect(done.status).toBe(0)
})
