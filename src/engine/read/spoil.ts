/** Every place of a case, as the keys that lead there. */
export function placesOf(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  return typeof value !== 'object' || value === null ? [path] : [path, ...Object.entries(value).flatMap(([key, inside]) => placesOf(inside, [...path, key]))]
}

/** The same case with one place of it put wrong. For tests. */
export function spoiled(value: unknown, [key, ...rest]: readonly string[], bad: unknown): unknown {
  if (key === undefined) return bad
  const copy = (Array.isArray(value) ? [...value] : { ...(value as { [key: string]: unknown }) }) as { [key: string]: unknown }
  copy[key] = spoiled(copy[key], rest, bad)
  return copy
}

/** Numbers that JSON cannot say would be lost at the door without a word. */
export function unsaid(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`]
  return typeof value === 'object' && value !== null ? Object.entries(value).flatMap(([key, inside]) => unsaid(inside, `${path}.${key}`)) : []
}
