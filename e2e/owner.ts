import { spawn } from 'node:child_process'
import { resolve } from 'node:path'

export const passphrase = 'three parallels on a plate'

const command = resolve(import.meta.dirname, '../dist/node/twinrest.js')

/** Runs the built command over a data folder, as the owner does on the machine itself; its answer. */
export function atTheMachine(dataFolder: string, words: readonly string[], input = ''): Promise<string> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [command, ...words, '--data', dataFolder])
    let out = '', err = ''
    child.stdout.on('data', (text: Buffer) => { out += text.toString() })
    child.stderr.on('data', (text: Buffer) => { err += text.toString() })
    child.on('close', (code) => (code === 0 ? done(out) : failed(new Error(`${words.join(' ')} ended with ${code}: ${err}`))))
    child.stdin.on('error', () => { /* not every command reads its input */ }).end(input)
  })
}

export async function ownerIsSet(dataFolder: string): Promise<void> {
  await atTheMachine(dataFolder, ['owner', 'passphrase'], `${passphrase}\n`)
}
