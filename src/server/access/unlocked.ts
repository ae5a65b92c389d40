import { createHmac, hkdfSync, timingSafeEqual } from 'node:crypto'
import { type KeptPassphrase, keptPassphrase } from '#store/access.ts'
import type { Store } from '#store/store.ts'

/** How long the owner's passphrase, once given, is not asked for again on that device. */
const unlockedMs = 10 * 60_000
export const unlockedS = unlockedMs / 1000

/**
 * Who has given the owner's passphrase lately. Nobody keeps a list: the device brings a token that says until when, sealed for
 * it and its shop by a key that comes from the kept passphrase. Every process over the shop takes it, after a restart too, and
 * a new passphrase ends them all.
 */
export type Unlocked = {
  /** @param proved  the passphrase as it was kept when it was given */
  readonly open: (device: string, proved: KeptPassphrase) => string
  readonly isOpen: (token: string, device: string) => Promise<boolean>
}

export function unlockedOf(store: Store, nowMs: () => number): Unlocked {
  const sealOf = (untilMs: string, device: string, kept: KeptPassphrase) => createHmac('sha256', keyFrom(kept)).update(JSON.stringify([store.shop, device, untilMs])).digest()
  return {
    open(device, proved) {
      const untilMs = String(nowMs() + unlockedMs)
      return `${untilMs}.${sealOf(untilMs, device, proved).toString('base64url')}`
    },
    async isOpen(token, device) {
      const [, untilMs, seal] = /^(\d{1,15})\.([\w-]{43})$/.exec(token) ?? []
      if (untilMs === undefined || seal === undefined || Number(untilMs) <= nowMs()) return false
      const kept = await keptPassphrase(store)
      return kept !== null && timingSafeEqual(sealOf(untilMs, device, kept), Buffer.from(seal, 'base64url'))
    },
  }
}

/** For this one use: the kept hash itself seals nothing. @source RFC-5869 */
const keyFrom = ({ hash, salt }: KeptPassphrase): Buffer => Buffer.from(hkdfSync('sha256', Buffer.from(hash, 'base64'), Buffer.from(salt, 'base64'), 'twinrest owner unlocked', 32))
