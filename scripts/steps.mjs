// One step of a test run: a command that passes or fails, or a test runner whose own counts are read.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { delimiter, dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

export const top = resolve(dirname(fileURLToPath(import.meta.url)), '..')
const bin = (pack, file) => [process.execPath, join('node_modules', pack, file)]
const results = join('node_modules', '.cache', 'results')

export const types = () => command('types', ...bin('typescript', 'bin/tsc'), '--incremental', '--tsBuildInfoFile', 'node_modules/.cache/types.tsbuildinfo')
export const pureTypes = () => command('types of the pure rooms', ...bin('typescript', 'bin/tsc'), '-p', 'tsconfig.pure.json')
export const roomsKept = () => command('rooms', process.execPath, 'scripts/rooms.mjs')
export const kernelCurrent = () => command('kernel', process.execPath, 'scripts/kernel.mjs', 'check')
export const lint = () => command('lint', ...bin('oxlint', 'bin/oxlint'), '--type-aware', '--deny-warnings')
export const deadCode = () => command('dead code', ...bin('knip', 'bin/knip.js'))
export const usedByTestsAlone = () => command('code that tests alone use', ...bin('knip', 'bin/knip.js'), '--production', '-c', 'knip.production.jsonc', '--include', 'files')
export const vitest = (project, env = {}) => counted(project, 'vitest', [...bin('vitest', 'vitest.mjs'), 'run', '--project', project], env)
export const browser = (env = {}, words = [], name = 'browser') => counted(name, 'playwright', [...bin('@playwright/test', 'cli.js'), 'test', ...words], env)

/** A command that passes or fails as one. */
export function command(name, ...words) {
  return () => {
    const failed = run(words, {}) !== 0
    return { name, passed: failed ? 0 : 1, failed: failed ? 1 : 0 }
  }
}

function counted(name, kind, words, env) {
  return () => {
    mkdirSync(join(top, results), { recursive: true })
    const file = join(top, results, `${name}.json`)
    rmSync(file, { force: true })
    const reporters = kind === 'vitest' ? ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`] : ['--reporter=list,json']
    const status = run([...words, ...reporters], { ...env, PLAYWRIGHT_JSON_OUTPUT_NAME: file })
    if (!existsSync(file)) return { name, passed: 0, failed: 1 }
    const { passed, failed } = kind === 'vitest' ? fromVitest(JSON.parse(readFileSync(file, 'utf8'))) : fromPlaywright(JSON.parse(readFileSync(file, 'utf8')))
    // A run that ended badly without naming a failed test (a file that did not load, an unhandled error) is a failure, too.
    return { name, passed, failed: status !== 0 && failed === 0 ? 1 : failed }
  }
}

/** What was skipped or left to do counts as failed: nothing is skipped silently. */
function fromVitest(report) {
  return { passed: report.numPassedTests, failed: report.numTotalTests - report.numPassedTests }
}
function fromPlaywright({ stats }) {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + stats.skipped }
}

function run([file, ...args], env) {
  return spawnSync(file, args, { cwd: top, stdio: 'inherit', env: { ...process.env, ...env } }).status ?? 1
}

/** Runs the steps in order, all of them, says how each went and closes with the plain line; exit code 1 if anything failed. */
export function runAll(steps) {
  const done = []
  for (const step of steps) {
    const began = Date.now()
    done.push({ ...step(), seconds: (Date.now() - began) / 1000 })
  }
  console.log('')
  for (const { name, passed, failed, seconds } of done) console.log(`${failed ? 'FAILED' : 'ok    '} ${name}: ${passed} of ${passed + failed} (${seconds.toFixed(1)} s)`)
  const sum = (key) => done.reduce((total, one) => total + one[key], 0)
  console.log(`\n${sum('passed')} passed, ${sum('failed')} failed`)
  process.exit(sum('failed') > 0 ? 1 : 0)
}

/**
 * The Chromium that browser stories run in: `PW_CHROMIUM`, one on the PATH, or Playwright's own, which is fetched if need be.
 * One without a window of its own is preferred: drawing the frame of windows nobody sees took a quarter of the time.
 */
export function chromium() {
  const onPath = (name) => (process.env.PATH ?? '').split(delimiter).map((folder) => join(folder, name)).find((file) => existsSync(file))
  const found = process.env.PW_CHROMIUM || ['chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome'].map(onPath).find(Boolean)
  if (found) return found
  const fetched = spawnSync(process.execPath, ['node_modules/@playwright/test/cli.js', 'install', 'chromium'], { cwd: top, stdio: 'inherit' })
  if (fetched.status === 0) return undefined
  return null
}

/** Fails by name, with what to do, where there is no browser. */
export function browserStories(env = {}, words = [], name = 'browser') {
  return () => {
    const found = chromium()
    if (found === null) {
      console.error('browser: no Chromium found and none could be fetched; install one (Debian: apt-get install chromium-headless-shell) or name it in PW_CHROMIUM.')
      return { name, passed: 0, failed: 1 }
    }
    return browser(found ? { ...env, PW_CHROMIUM: found } : env, words, name)()
  }
}
