import { existsSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { Refusal } from '#model/refusal.ts'
import { readHostName } from '#server/access/machine-names.ts'

export type Config = {
  /** 0 asks the machine for any free port. */
  readonly port: number
  readonly dataFolder: string
  readonly demo: boolean
  /** Whom the shop is open to: this machine alone; its network; whoever a proxy on this machine passes on. */
  readonly open: 'this machine' | 'network' | 'proxy'
  /** Names and addresses the machine is reached by, besides those it knows itself. */
  readonly hostNames: readonly string[]
  readonly backupFolder: string
  /** A backup is made when the last one is older than this; 0: never. */
  readonly backupHours: number
  /** Every request gets a line in the log. */
  readonly logRequests: boolean
  /** Files of a certificate and its key, as PEM; null: the shop's own where one was made. */
  readonly certificate: { readonly certificate: string; readonly key: string } | null
}

type Environment = { readonly [name: string]: string | undefined }

const options = {
  'port': { type: 'string' }, 'data': { type: 'string' }, 'demo': { type: 'boolean' },
  'lan': { type: 'boolean' }, 'behind-proxy': { type: 'boolean' }, 'host-name': { type: 'string', multiple: true }, 'cert': { type: 'string' }, 'key': { type: 'string' },
  'backups': { type: 'string' }, 'backup-hours': { type: 'string' }, 'log-requests': { type: 'boolean' },
} as const
type Name = keyof typeof options
const usualPort = '4173', usualBackupHours = '24'

/**
 * Where to listen, whom to let in and where the shop is kept: the command line before the environment before the usual.
 *
 * @throws Refusal `unknown-option`, `option-empty`, `bad-port`, `host-name-not-valid`, `certificate-without-key`, `lan-or-proxy`, `value-not-allowed`
 */
export function readConfig(args: readonly string[], environment: Environment): Config {
  const { tokens } = parseArgs({ args: [...args], options, strict: false, allowPositionals: true, tokens: true })
  const texts = new Map<Name, string[]>(), switches = new Set<Name>()
  for (const token of tokens) {
    if (token.kind === 'option-terminator') continue
    if (token.kind === 'positional' || !Object.hasOwn(options, token.name)) {
      throw new Refusal('unknown-option', { given: token.kind === 'positional' ? token.value : token.rawName, needed: Object.keys(options).map((name) => `--${name}`) })
    }
    const name = token.name as Name
    if (options[name].type === 'boolean') switches.add(name)
    else texts.set(name, [...texts.get(name) ?? [], valueOf(token.rawName, token.value)])
  }
  const text = (name: Name, variable: string) => texts.get(name)?.at(-1) ?? (environment[variable] || undefined)
  const isOn = (name: Name, variable: string) => switches.has(name) || readSwitch(environment, variable)
  const dataFolder = dataFolderFrom(texts.get('data')?.at(-1), environment)
  return {
    port: readPort(text('port', 'TWINREST_PORT') ?? usualPort),
    dataFolder,
    backupFolder: backupFolderFrom(texts.get('backups')?.at(-1), dataFolder, environment),
    backupHours: readHours(text('backup-hours', 'TWINREST_BACKUP_HOURS') ?? usualBackupHours),
    logRequests: isOn('log-requests', 'TWINREST_LOG_REQUESTS'),
    demo: switches.has('demo'),
    open: openTo(isOn('lan', 'TWINREST_LAN'), isOn('behind-proxy', 'TWINREST_BEHIND_PROXY')),
    hostNames: (texts.get('host-name') ?? environment.TWINREST_HOST_NAME?.split(',').filter((name) => name.trim() !== '') ?? []).map(readHostName),
    certificate: certificateFrom(text('cert', 'TWINREST_CERT'), text('key', 'TWINREST_KEY')),
  }
}

/** The folder of the shop's database. An environment variable that is set but empty counts as not set. @throws Refusal `option-empty` */
export function dataFolderFrom(given: string | undefined, environment: Environment): string {
  if (given === '') throw new Refusal('option-empty', { given: '--data' })
  return resolve(given ?? (environment.TWINREST_DATA || join(checkoutTop(), 'data')))
}

/** The folder of the backups; another disk than that of the data outlives it. @throws Refusal `option-empty` */
export function backupFolderFrom(given: string | undefined, dataFolder: string, environment: Environment): string {
  if (given === '') throw new Refusal('option-empty', { given: '--backups' })
  return resolve(given ?? (environment.TWINREST_BACKUPS || join(dataFolder, 'backups')))
}

/** @throws Refusal `value-not-allowed` */
function readHours(text: string): number {
  const hours = /^\d{1,4}$/.test(text.trim()) ? Number(text) : Number.NaN
  if (!(hours <= 8760)) throw new Refusal('value-not-allowed', { field: '--backup-hours', given: text.slice(0, 40), needed: 'whole hours from 0 (never) to 8760' })
  return hours
}

/** @throws Refusal `bad-port` */
export function readPort(text: string): number {
  const port = /^\d{1,5}$/.test(text.trim()) ? Number(text) : Number.NaN
  if (!(port <= 65535)) throw new Refusal('bad-port', { given: text.slice(0, 40) })
  return port
}

/** The top of the checkout, from where this file stands, built or not: never from the working directory. */
export function checkoutTop(): string {
  let folder = dirname(fileURLToPath(import.meta.url))
  while (!existsSync(join(folder, 'package.json')) && dirname(folder) !== folder) folder = dirname(folder)
  return folder
}

function openTo(lan: boolean, behindProxy: boolean): Config['open'] {
  if (lan && behindProxy) throw new Refusal('lan-or-proxy')
  return lan ? 'network' : behindProxy ? 'proxy' : 'this machine'
}

function certificateFrom(certificate: string | undefined, key: string | undefined): Config['certificate'] {
  if (certificate === undefined && key === undefined) return null
  if (certificate === undefined || key === undefined) throw new Refusal('certificate-without-key', certificate === undefined ? { given: '--key', needed: '--cert' } : { given: '--cert', needed: '--key' })
  return { certificate: resolve(certificate), key: resolve(key) }
}

/** What opens the shop must be plain: anything but 1, 0 or nothing is refused. @throws Refusal `value-not-allowed` */
function readSwitch(environment: Environment, variable: string): boolean {
  const value = environment[variable] ?? ''
  if (value !== '' && value !== '0' && value !== '1') throw new Refusal('value-not-allowed', { field: variable, given: value.slice(0, 40), needed: ['1', '0'] })
  return value === '1'
}

function valueOf(name: string, value: string | undefined): string {
  if (value === undefined || value === '') throw new Refusal('option-empty', { given: name })
  return value
}
