/** What belongs together by a key, in the order in which it came. */
export function grouped<One>(list: readonly One[], keyOf: (one: One) => string): ReadonlyMap<string, readonly One[]> {
  const groups = new Map<string, One[]>()
  for (const one of list) {
    const key = keyOf(one), group = groups.get(key)
    if (group) group.push(one)
    else groups.set(key, [one])
  }
  return groups
}
