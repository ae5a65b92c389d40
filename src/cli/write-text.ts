import { writeFile } from 'node:fs/promises'
import { Refusal } from '#model/refusal.ts'

/** @throws Refusal `file-not-writable` */
export async function writeText(file: string, text: string): Promise<void> {
  try {
    await writeFile(file, text)
  } catch (error) {
    throw new Refusal('file-not-writable', { given: file, reason: error instanceof Error && 'code' in error ? String(error.code) : 'unknown' })
  }
}
