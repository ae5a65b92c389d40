/** A text file as desktop programs write them: UTF-8, UTF-16 with its mark, or else the old Western encoding, which is said. */
export function textOfFile(bytes: Uint8Array): { readonly text: string; readonly oldText: boolean } {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return { text: new TextDecoder('utf-16le').decode(bytes), oldText: false }
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return { text: new TextDecoder('utf-16be').decode(bytes), oldText: false }
  try { return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), oldText: false } } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), oldText: true }
  }
}
