import type { Cited } from '#model/cited.ts'

/** Where a number of a table is from, as it stands beside it: `DIN-863`, `ISO-3650, quoted from memory`. */
export function saySource({ source, standing }: Cited): string {
  switch (standing) {
    case 'published': return source
    case 'memory': return `${source}, quoted from memory`
    case 'common practice': return 'common practice, no source'
    case 'computed': return `${source}, worked out`
    case 'shop': return 'the shop’s own'
  }
}
