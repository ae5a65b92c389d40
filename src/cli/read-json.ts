import { readFile } from 'node:fs/promises'
import { Refusal } from '#model/refusal.ts'

/** @throws Refusal `file-not-there`, `file-not-readable`, `not-json` */
export async function readJsonFile(file: string): Promise<unknown> {
  return parseJson(await readTextFile(file), file === '-' ? 'Standard input' : file)
}

/** @throws Refusal `file-not-there`, `file-not-readable` */
export async function readTextFile(file: string): Promise<string> {
  return (await readBytes(file)).toString('utf8')
}

/** The bytes of a file; `-` is standard input. @throws Refusal `file-not-there`, `file-not-readable` */
export async function readBytes(file: string): Promise<Buffer> {
  try {
    return file === '-' ? await readStandardInput() : await readFile(file)
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown'
    throw reason === 'ENOENT' ? new Refusal('file-not-there', { given: file }) : new Refusal('file-not-readable', { given: file, reason })
  }
}

export async function readStandardInput(): Promise<Buffer> {
  const pieces: Buffer[] = []
  for await (const piece of process.stdin) pieces.push(Buffer.from(piece as Buffer))
  return Buffer.concat(pieces)
}

/** @throws Refusal `not-json` */
export function parseJson(text: string, file?: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    throw new Refusal('not-json', { ...(file === undefined ? {} : { file }), where: error instanceof Error ? error.message.slice(0, 120) : '' })
  }
}
