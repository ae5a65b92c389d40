import type { Bar } from '#model/bar.ts'

/** Bars that are mates now, group by group, each lowest first (equals by id); odd bars are in none. @param bars  as `barsFrom` gives them */
export function matesTogether(bars: readonly Bar[]): readonly (readonly [Bar, Bar, ...Bar[]])[] {
  const groups = new Map<string, Bar[]>()
  for (const bar of bars) if (bar.mates !== undefined) groups.set(bar.mates, [...groups.get(bar.mates) ?? [], bar])
  return [...groups.values()].flatMap((group) => {
    const [one, other, ...more] = group.toSorted((a, b) => a.heightMm - b.heightMm || (a.id < b.id ? -1 : 1))
    return one && other ? [[one, other, ...more] as const] : []
  })
}
