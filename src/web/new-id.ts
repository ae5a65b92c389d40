import { codeFrom } from '#model/code.ts'

/** An id made on this device: 20 letters, 100 bits. Works on plain http too, where `crypto.randomUUID` does not exist. */
export function newId(): string {
  return codeFrom(crypto.getRandomValues(new Uint8Array(20)))
}

/** A code of eight letters for the label of a bar or slot. */
export function newCode(): string {
  return codeFrom(crypto.getRandomValues(new Uint8Array(8)))
}

export function nowIso(): string {
  return new Date().toISOString()
}
