import { spawn } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { build } from 'vite'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startShop } from '../shop-process.ts'
import { databaseState } from './database-state.ts'
import { deedOfBar } from './deed-of-bar.ts'

const top = resolve(import.meta.dirname, '../..')
// Inside node_modules, so that the built writer finds its packages.
const built = join(top, 'node_modules/.cache/endure')
const command = join(top, 'dist/node/twinrest.js')

beforeAll(async () => {
  await build({
    configFile: false, logLevel: 'warn', publicDir: false, resolve: { alias: [{ find: /^#(.*)$/, replacement: `${top}/src/$1` }] },
    build: { ssr: join(import.meta.dirname, 'writer.ts'), outDir: built, emptyOutDir: true, target: 'node20', minify: false },
  })
})
afterAll(() => rm(built, { recursive: true, force: true }))

/** Runs a process to its end; what it printed, line by line. */
function run(args: readonly string[]): Promise<string[]> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] })
    let said = '', wrong = ''
    child.stdout.on('data', (text: Buffer) => { said += text.toString() })
    child.stderr.on('data', (text: Buffer) => { wrong += text.toString() })
    child.on('exit', (code) => { if (code === 0) done(said.trim().split('\n')); else failed(new Error(`ended with ${code}: ${wrong}`)) })
  })
}

const writer = (folder: string, name: string, count: number) => run([join(built, 'writer.js'), folder, name, String(count)])

test('processes that open an empty folder at once, and write at once, all get through', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'twinrest-'))
  try {
    const said = await Promise.all(['a', 'b', 'c', 'd'].map((name) => writer(folder, name, 60)))
    const state = databaseState(folder)
    expect(state).toMatchObject({ integrity: 'ok', strays: [], halves: [] })
    expect(state.bars).toEqual(new Set(said.flat()))
    expect(state.bars.size).toBe(240)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
})

test('processes that bring the very same at once leave it there once', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'twinrest-'))
  try {
    await Promise.all([1, 2, 3].map(() => writer(folder, 'same', 40)))
    const state = databaseState(folder)
    expect(state).toMatchObject({ integrity: 'ok', halves: [] })
    expect(state.bars.size).toBe(40)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
})

test('the command and other writers work on the data folder of a running server', async () => {
  const shop = await startShop({ demo: false })
  try {
    const posted = (async () => {
      for (let at = 0; at < 60; at += 1) {
        const answer = await fetch(`${shop.url}/api/deeds`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(deedOfBar(`s-${at}`).deed) })
        expect(answer.status, await answer.clone().text()).toBe(200)
      }
    })()
    const added = (async () => {
      for (let at = 0; at < 5; at += 1) await run([command, 'rack', 'add', '--data', shop.dataFolder, '--height', '20', '--thickness', '8', '--length', '150', '--name', `by hand ${at}`])
    })()
    await Promise.all([posted, added, writer(shop.dataFolder, 'w', 60)])
    const { bars } = await (await fetch(`${shop.url}/api/shop`)).json() as { bars: unknown[] }
    expect(bars).toHaveLength(125)
    expect(databaseState(shop.dataFolder)).toMatchObject({ integrity: 'ok', strays: [], halves: [] })
  } finally {
    await shop.clear()
  }
})
