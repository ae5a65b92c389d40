import { meansThisMachine } from '#server/access/machine-names.ts'

/** How far the shop is open, and what it is reached by. */
export type Reach = {
  /** Others than this machine may come; they need a token. */
  readonly network: boolean
  /** Every request is passed on by a proxy on this machine, whose word on who asked is taken. */
  readonly behindProxy: boolean
  /** Whether a host, without its port, means this machine. */
  readonly isOurs: (host: string) => boolean
  /** Where other devices find the shop, the likeliest first: `https://192.168.1.20:4173`. */
  readonly addresses: () => readonly string[]
  /** The shop's own authority, where one stands behind its certificate: as PEM, and its SHA-256 as devices show it. */
  readonly authority: () => { readonly pem: string; readonly fingerprint: string } | null
}

/** As it is until somebody opens it. */
export const thisMachineAlone: Reach = {
  network: false, behindProxy: false, isOurs: (host) => meansThisMachine(host, [], false), addresses: () => [], authority: () => null,
}
