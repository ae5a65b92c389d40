import { spawn, type ChildProcess } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { freePort } from './free-port.ts'

const builtServer = resolve(import.meta.dirname, '../dist/node/main.js')

/** A server of our own over a data folder of our own, as `npm start` starts it. */
export type ShopProcess = {
  readonly url: string
  readonly dataFolder: string
  /** SIGKILL: as a power cut. */
  kill(): Promise<void>
  /** SIGTERM, then wait for the end. */
  stop(): Promise<number | null>
  /** Starts again on the same port and folder. */
  start(): Promise<void>
  /** Stops it and takes the folder away. */
  clear(): Promise<void>
}

type Wanted = {
  readonly demo: boolean
  /** The server, where this file is itself bundled. */
  readonly main?: string
  /** Further words of the command line. */
  readonly args?: readonly string[]
  /** Further settings of its environment. */
  readonly env?: { readonly [name: string]: string }
  /** What is done with the data folder before the server first starts. */
  readonly before?: (dataFolder: string) => Promise<void>
}

/** Starts the built server on a free port over a new folder; resolves once it answers. */
export async function startShop({ demo, main = builtServer, args = [], env = {}, before }: Wanted): Promise<ShopProcess> {
  const port = await freePort()
  const dataFolder = await mkdtemp(join(tmpdir(), 'twinrest-'))
  const url = `http://127.0.0.1:${port}`
  let child: ChildProcess | null = null

  async function start(): Promise<void> {
    const started = spawn(process.execPath, [main, '--data', dataFolder, '--port', String(port), ...(demo ? ['--demo'] : []), ...args], { stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, ...env } })
    child = started
    let said = ''
    started.stdout.on('data', (text: Buffer) => { said += text.toString() })
    started.stderr.on('data', (text: Buffer) => { said += text.toString() })
    for (let tries = 0; tries < 400; tries += 1) {
      if (started.exitCode !== null) throw new Error(`the server ended at once: ${said}`)
      const answered = await fetch(`${url}/api/health`).then((answer) => answer.ok, () => false)
      if (answered) return
      await new Promise((done) => { setTimeout(done, 25) })
    }
    throw new Error(`the server did not answer: ${said}`)
  }
  async function end(signal: 'SIGKILL' | 'SIGTERM'): Promise<number | null> {
    const running = child
    if (!running || running.exitCode !== null || running.signalCode !== null) return running?.exitCode ?? null
    const ended = new Promise<number | null>((done) => { running.once('exit', (code) => done(code)) })
    running.kill(signal)
    return await ended
  }
  await before?.(dataFolder)
  await start()
  return {
    url, dataFolder, start,
    kill: async () => { await end('SIGKILL') },
    stop: () => end('SIGTERM'),
    clear: async () => { await end('SIGKILL'); await rm(dataFolder, { recursive: true, force: true }) },
  }
}
