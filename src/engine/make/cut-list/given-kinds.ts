import type { Kind, Pattern } from '#engine/make/cut-list/cut-problem.ts'

/** Pieces as they were given, and those of one key put together: the key, and where they were given. */
export type GivenKinds = { readonly kinds: readonly (Kind & { readonly given: readonly number[] })[]; readonly counts: readonly number[] }

/** Pieces of which none are asked for are left out; kinds come in falling size. */
export function mergedKinds(given: readonly { readonly size: number; readonly count: number; readonly key: string }[]): GivenKinds {
  const merged = new Map<string, { size: number; count: number; given: number[] }>()
  given.forEach(({ size, count, key }, at) => {
    if (count === 0) return
    const kind = merged.get(key)
    if (kind) { kind.count += count; kind.given.push(at) } else merged.set(key, { size, count, given: [at] })
  })
  return { kinds: [...merged.values()].sort((a, b) => b.size - a.size), counts: given.map(({ count }) => count) }
}

/** Patterns in pieces as they were given: how many of each, and how often. Pieces put together are told apart again, the first given first. */
export function asGiven({ kinds, counts }: GivenKinds, used: readonly { readonly pattern: Pattern; readonly times: number }[]): { readonly stock: number; readonly counts: number[]; readonly times: number }[] {
  const left = [...counts], rows: { stock: number; counts: number[]; times: number }[] = []
  for (const { pattern, times } of used) {
    for (let open = times; open > 0;) {
      const row = counts.map(() => 0)
      pattern.kinds.forEach((kind, k) => {
        let needed = pattern.counts[k]!
        for (const at of kinds[kind]!.given) { row[at] = Math.min(needed, left[at]!); needed -= row[at] }
      })
      const often = Math.min(open, ...row.flatMap((count, at) => (count > 0 ? [Math.floor(left[at]! / count)] : [])))
      row.forEach((count, at) => { left[at]! -= often * count })
      rows.push({ stock: pattern.stock, counts: row, times: often })
      open -= often
    }
  }
  return rows
}
