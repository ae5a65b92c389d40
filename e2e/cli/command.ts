import { spawn } from 'node:child_process'
import { resolve } from 'node:path'

const built = resolve(import.meta.dirname, '../../dist/node/twinrest.js')
const top = resolve(import.meta.dirname, '../..')

export type Ran = { readonly code: number | null; readonly out: string; readonly err: string }

/** Runs the built command as a person does, from the checkout's top. */
export function twinrest(args: readonly string[], { input = '', env = {} }: { readonly input?: string; readonly env?: { readonly [name: string]: string } } = {}): Promise<Ran> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [built, ...args], { cwd: top, env: { ...process.env, ...env } })
    let out = '', err = ''
    child.stdout.setEncoding('utf8').on('data', (text: string) => { out += text })
    child.stderr.setEncoding('utf8').on('data', (text: string) => { err += text })
    child.on('error', failed).on('close', (code) => done({ code, out, err }))
    child.stdin.on('error', () => { /* a command that does not read its input closes it */ }).end(input)
  })
}
