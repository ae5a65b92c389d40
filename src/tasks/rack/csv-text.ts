export type CsvText = { readonly text: string; readonly oldText: boolean }

/**
 * The text of a CSV file: UTF-8, UTF-16 (either order of bytes, with or without its mark), or where it is none of them the
 * old Western encoding of desktop programs, which is then said.
 */
export function csvTextFrom(file: Uint8Array | string): CsvText {
  const read = typeof file === 'string' ? { text: file, oldText: false } : decoded(file)
  return { text: read.text.replace(/^\u{feff}/u, ''), oldText: read.oldText }
}

function decoded(bytes: Uint8Array): CsvText {
  const as = (encoding: string): CsvText => ({ text: new TextDecoder(encoding).decode(bytes), oldText: false })
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return as('utf-16le')
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return as('utf-16be')
  const zeros = [0, 0]
  bytes.subarray(0, 1000).forEach((byte, at) => { if (byte === 0) zeros[at % 2]! += 1 })
  const most = Math.min(bytes.length, 1000) / 4
  if (zeros[1]! > most && zeros[0] === 0) return as('utf-16le')
  if (zeros[0]! > most && zeros[1] === 0) return as('utf-16be')
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), oldText: false }
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), oldText: true }
  }
}
