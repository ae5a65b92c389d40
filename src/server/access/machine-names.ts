import { hostname, networkInterfaces } from 'node:os'
import { isIP } from 'node:net'
import { Refusal } from '#model/refusal.ts'
import { isPrivate } from '#tasks/access/certificate/private.ts'

/** Names every machine has for itself. */
export const ownNames = ['127.0.0.1', 'localhost', '::1'] as const

/**
 * What this machine is reached by in its network: the names it was given, addresses, then its own name. Addresses come
 * before its own name, which not every tablet can look up.
 */
export function networkNames(given: readonly string[]): readonly string[] {
  const name = hostname().toLowerCase().split('.')[0]!
  const own = /^[a-z0-9]([a-z0-9-]*[a-z0-9])?$/.test(name) && name !== 'localhost' ? [`${name}.local`, name] : []
  return [...new Set([...given, ...addresses().filter((one) => isIP(one) === 4 || isPrivate(one)), ...own])]
}

/** Whether a host of a request, without its port, means this machine. Anything else came by a name that someone else controls. */
export function meansThisMachine(host: string, given: readonly string[], network: boolean): boolean {
  const name = host.replace(/^\[(.*)\]$/, '$1').toLowerCase()
  if (ownNames.some((own) => own === name) || given.includes(name)) return true
  return network && (networkNames([]).includes(name) || addresses().includes(name))
}

/** @throws Refusal `host-name-not-valid` */
export function readHostName(text: string): string {
  const name = text.trim().toLowerCase().replace(/^\[(.*)\]$/, '$1')
  if (isIP(name) === 0 && !/^[a-z0-9]([a-z0-9-]*[a-z0-9])?(\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)*$/.test(name)) throw new Refusal('host-name-not-valid', { field: '--host-name', given: text.slice(0, 80) })
  return name
}

/** As it stands in an address: IPv6 in brackets. */
export function inAddress(name: string): string {
  return isIP(name) === 6 ? `[${name}]` : name
}

/** Those that others can reach; link-local ones name no machine without saying which wire. */
function addresses(): readonly string[] {
  return Object.values(networkInterfaces()).flatMap((all) => all ?? []).filter(({ internal, address }) => !internal && !/^fe80:/i.test(address)).map(({ address }) => address.toLowerCase())
}
