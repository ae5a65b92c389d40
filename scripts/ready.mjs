// Makes a checkout ready: installs what the lockfile names, sees that the database module loads, builds what is stale.
// Plain Node, no packages: it runs before anything is installed. `node scripts/ready.mjs [build]`.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { chmodSync, existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

const top = resolve(dirname(fileURLToPath(import.meta.url)), '..')
process.chdir(top)
const stamps = join('node_modules', '.cache', 'ready')
const buildSources = ['src', 'vite.config.ts', 'vite.server.ts', 'vite.sw.ts', 'package-lock.json', 'tsconfig.json']
const built = [join('dist', 'web', 'index.html'), join('dist', 'node', 'main.js'), join('dist', 'node', 'twinrest.js')]

const [major, minor] = process.versions.node.split('.').map(Number)
if (major < 20 || (major === 20 && minor < 19)) stop(`Twinrest needs Node 20.19 or newer; this is ${process.versions.node}.`)

const lock = hashOf(['package-lock.json'])
if (stamp('install') !== lock) {
  // Someone's own `npm install` after the last change of the lockfile counts too.
  if (!newer(join('node_modules', '.package-lock.json'), 'package-lock.json')) npm('ci', '--include=dev', '--no-audit', '--no-fund')
  setStamp('install', lock)
}
if (!nativeLoads()) {
  npm('rebuild', 'better-sqlite3')
  if (!nativeLoads()) stop('The database module could not be built: install a C++ compiler, make, Python 3 and Node\'s headers, then run this again.')
}
if (process.argv[2] === 'build') {
  const sources = hashOf(buildSources)
  if (stamp('build') !== sources || !built.every((file) => existsSync(file))) {
    say('building …')
    vite('vite.config.ts')
    vite('vite.server.ts')
    chmodSync(join('dist', 'node', 'twinrest.js'), 0o755) // npx runs it as a command
    setStamp('build', sources)
  }
}

function vite(config) {
  run(process.execPath, [join('node_modules', 'vite', 'bin', 'vite.js'), 'build', '--logLevel', 'warn', '-c', config])
}

/** The npm that runs us, without a shell. */
function npm(...args) {
  say(`npm ${args.join(' ')} …`)
  const cli = process.env.npm_execpath
  if (cli?.endsWith('npm-cli.js')) run(process.execPath, [cli, ...args])
  else run('npm', args, process.platform === 'win32')
}

/** Runs a step with what an outer npm would forbid it taken away; a failed step ends with its exit code. */
function run(command, args, shell = false) {
  const env = Object.fromEntries(Object.entries(process.env)
    .filter(([name]) => name !== 'NODE_ENV' && !/^npm_config_(omit|include|only|production|ignore_scripts)$/i.test(name)))
  const done = spawnSync(command, args, { stdio: ['ignore', 2, 2], env, shell })
  if (done.error) stop(`${command} could not be started: ${done.error.message}`)
  if (done.status !== 0) {
    if (args.includes('ci')) say('npm could not install. Where no prebuilt database module can be fetched it needs a C++ compiler, make, Python 3 and Node\'s headers.')
    process.exit(done.status ?? 1)
  }
}

function nativeLoads() {
  return spawnSync(process.execPath, ['-e', "new (require('better-sqlite3'))(':memory:').close()"]).status === 0
}

function hashOf(paths) {
  const hash = createHash('sha256')
  for (const path of paths.flatMap(filesIn)) hash.update(path).update(readFileSync(path))
  return hash.digest('hex')
}

function filesIn(path) {
  if (!existsSync(path)) return []
  if (!statSync(path).isDirectory()) return [path]
  return readdirSync(path, { recursive: true }).map((name) => join(path, name))
    .filter((file) => statSync(file).isFile() && !/\.test\.tsx?$/.test(file)).sort()
}

function newer(a, b) { return existsSync(a) && existsSync(b) && statSync(a).mtimeMs >= statSync(b).mtimeMs }
function stamp(name) { const file = join(stamps, name); return existsSync(file) ? readFileSync(file, 'utf8') : '' }
function setStamp(name, value) { mkdirSync(stamps, { recursive: true }); writeFileSync(join(stamps, name), value) }
function say(text) { console.error(text) }
function stop(text) { say(text); process.exit(1) }
