// `npm run pictures`: the screenshots of the README, made anew from the demo shop.
import { spawnSync } from 'node:child_process'
import { chromium, top } from './steps.mjs'

const found = chromium()
if (found === null) { console.error('pictures: no Chromium found; name one in PW_CHROMIUM.'); process.exit(1) }
const done = spawnSync(process.execPath, ['node_modules/@playwright/test/cli.js', 'test', '-c', 'e2e/pictures/playwright.config.ts'], {
  cwd: top, stdio: 'inherit', env: { ...process.env, ...(found ? { PW_CHROMIUM: found } : {}) },
})
process.exit(done.status ?? 1)
