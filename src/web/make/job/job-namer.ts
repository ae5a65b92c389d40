import type { JobRecord } from '#model/job-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { NameOf } from '#words/wording.ts'
import { stockNamer } from '#web/make/stock-namer.ts'

/** Bars, stock and machines of a job by their names. */
export function jobNamer({ planned }: JobRecord, { bars }: ShopSnapshot): NameOf {
  const names = new Map(bars.map(({ id, name }) => [id, name])), stock = planned ? stockNamer(planned) : (id: string) => id
  return (id) => names.get(id) || stock(id)
}
