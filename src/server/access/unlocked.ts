import { createHash, randomBytes } from 'node:crypto'

/** How long the owner's passphrase, once given, is not asked for again on that device. */
const unlockedMs = 10 * 60_000
export const unlockedS = unlockedMs / 1000

/** Who has given the owner's passphrase lately: kept in memory, for one device each. */
export type Unlocked = {
  /** @returns a token that says so */
  readonly open: (device: string) => string
  readonly isOpen: (token: string, device: string) => boolean
  readonly close: (token: string) => void
  readonly closeAll: () => void
}

export function unlockedOf(nowMs: () => number): Unlocked {
  const open = new Map<string, { readonly device: string; readonly untilMs: number }>()
  const hashOf = (token: string) => createHash('sha256').update(token).digest('hex')
  return {
    open(device) {
      for (const [hash, { untilMs }] of open) if (untilMs <= nowMs()) open.delete(hash)
      const token = randomBytes(32).toString('base64url')
      open.set(hashOf(token), { device, untilMs: nowMs() + unlockedMs })
      return token
    },
    isOpen(token, device) {
      const found = open.get(hashOf(token))
      return found !== undefined && found.device === device && found.untilMs > nowMs()
    },
    close: (token) => { open.delete(hashOf(token)) },
    closeAll: () => open.clear(),
  }
}
