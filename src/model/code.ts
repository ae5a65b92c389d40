/** Letters of the codes on labels: no 0 O 1 I, so a code read aloud or off a worn label stays what it is. */
export const codeAlphabet = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ'

/** A code of `length` letters from random bytes passed in, one byte a letter (32 divides 256, so all are alike likely). */
export function codeFrom(bytes: Uint8Array, length = bytes.length): string {
  let code = ''
  for (let i = 0; i < length; i += 1) code += codeAlphabet[bytes[i]! & 31]
  return code
}

export const isCode = (text: string): boolean => /^[2-9A-HJ-NP-Z]{8}$/.test(text)
