import { BlockList, isIP } from 'node:net'

/** Addresses that lead to no machine outside. @source RFC-1918, RFC-4193, RFC-3927, RFC-6598 */
export const privateNetworks = ['10.0.0.0/8', '172.16.0.0/12', '192.168.0.0/16', '100.64.0.0/10', '169.254.0.0/16', '127.0.0.0/8', 'fc00::/7', '::1/128'] as const

/** Names, and all below them, that are never sold. @source RFC-6762, RFC-8375, RFC-6761 */
export const privateNames = ['local', 'lan', 'internal', 'home.arpa', 'localhost'] as const

/** Whether a name or address can belong to a private network alone. */
export function isPrivate(name: string): boolean {
  const family = isIP(name)
  if (family === 0) return privateNames.some((known) => name === known || name.endsWith(`.${known}`))
  return networks.check(name, family === 4 ? 'ipv4' : 'ipv6')
}

const networks = new BlockList()
for (const network of privateNetworks) {
  const [address, bits] = network.split('/') as [string, string]
  networks.addSubnet(address, Number(bits), isIP(address) === 4 ? 'ipv4' : 'ipv6')
}
