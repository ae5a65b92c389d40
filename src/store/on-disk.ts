import { closeSync, fsyncSync, openSync } from 'node:fs'

/** Waits until what is in a file, or which files are in a folder, would outlast a power cut. */
export function toDisk(path: string): void {
  const opened = openSync(path, 'r')
  try { fsyncSync(opened) } finally { closeSync(opened) }
}
