import type { PlannedWith } from '#model/job-record.ts'
import type { NameOf } from '#words/wording.ts'

/** Stock and machines by their names. */
export function stockNamer({ lengths, plates, machines }: PlannedWith): NameOf {
  const names = new Map([...lengths, ...plates, ...machines].map(({ id, name }) => [id, name]))
  return (id) => names.get(id) ?? id
}
