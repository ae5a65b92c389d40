import { existsSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { Refusal } from '#model/refusal.ts'

export type Config = {
  /** 0 asks the machine for any free port. */
  readonly port: number
  readonly dataFolder: string
  readonly demo: boolean
}

type Environment = { readonly [name: string]: string | undefined }

const options = { port: { type: 'string' }, data: { type: 'string' }, demo: { type: 'boolean' } } as const
const usualPort = '4173'

/**
 * Where to listen and where the shop is kept: the command line before the environment before the usual.
 *
 * @throws Refusal `unknown-option`, `option-empty`, `bad-port`
 */
export function readConfig(args: readonly string[], environment: Environment): Config {
  const { tokens } = parseArgs({ args: [...args], options, strict: false, allowPositionals: true, tokens: true })
  const given: { port?: string; data?: string; demo?: boolean } = {}
  for (const token of tokens) {
    if (token.kind === 'option-terminator') continue
    if (token.kind === 'positional' || !Object.hasOwn(options, token.name)) {
      throw new Refusal('unknown-option', { given: token.kind === 'positional' ? token.value : token.rawName, needed: Object.keys(options).map((name) => `--${name}`) })
    }
    if (token.name === 'demo') given.demo = true
    else given[token.name as 'port' | 'data'] = valueOf(token.rawName, token.value)
  }
  return {
    port: readPort(given.port ?? (environment.TWINREST_PORT || usualPort)),
    dataFolder: dataFolderFrom(given.data, environment),
    demo: given.demo ?? false,
  }
}

/** The folder of the shop's database. An environment variable that is set but empty counts as not set. @throws Refusal `option-empty` */
export function dataFolderFrom(given: string | undefined, environment: Environment): string {
  if (given === '') throw new Refusal('option-empty', { given: '--data' })
  return resolve(given ?? (environment.TWINREST_DATA || join(checkoutTop(), 'data')))
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

function valueOf(name: string, value: string | undefined): string {
  if (value === undefined || value === '') throw new Refusal('option-empty', { given: name })
  return value
}
