import type { IncomingMessage } from 'node:http'
import type { Context } from 'hono'
import type { Reach } from '#server/access/reach.ts'

/** Where a request came from and what it asked for, by the connection itself or, behind a proxy, by the proxy's word. */
export type Origin = {
  /** Of the caller. */
  readonly address: string
  /** As the caller sees it, with its port where it is not the usual one. */
  readonly host: string
  readonly https: boolean
  /** From this machine, by nobody else's hand. */
  readonly here: boolean
}

export function originOf(c: Context, { network, behindProxy }: Reach): Origin {
  const url = new URL(c.req.url), header = (name: string) => c.req.header(name)
  const peer = (c.env as { readonly incoming?: IncomingMessage } | undefined)?.incoming?.socket.remoteAddress?.replace(/^::ffff:/, '') ?? ''
  if (!behindProxy) return { address: peer, host: (header('host') ?? url.host).toLowerCase(), https: url.protocol === 'https:', here: !network || isThisMachine(peer) }
  return {
    address: header('x-forwarded-for')?.split(',').at(-1)?.trim() || peer,
    host: (header('x-forwarded-host') ?? header('host') ?? url.host).toLowerCase(),
    https: header('x-forwarded-proto')?.toLowerCase() === 'https', here: false,
  }
}

/** The two addresses a machine calls itself by; whatever comes from another was carried here. */
export function isThisMachine(address: string): boolean {
  return address === '127.0.0.1' || address === '::1'
}

export function isPassedOn(c: Context): boolean {
  return ['forwarded', 'x-forwarded-for', 'x-forwarded-host', 'x-real-ip'].some((name) => c.req.header(name) !== undefined)
}
