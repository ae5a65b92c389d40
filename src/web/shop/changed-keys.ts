import { canonical } from '#model/canonical.ts'

/** The fields that differ in what they hold, in whatever order their parts stand. */
export function changedKeys<Fields extends object>(wanted: Partial<Fields>, before: Fields): (keyof Fields)[] {
  return (Object.keys(wanted) as (keyof Fields)[]).filter((key) => canonical(wanted[key]) !== canonical(before[key]))
}
