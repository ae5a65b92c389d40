import { type Leftover, parentOf } from '#engine/make/blanks/leftovers.ts'
import { offcutFrom } from '#engine/make/job/leftovers-of-job.ts'
import type { JobRecord } from '#model/job-record.ts'
import { wordLength } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { sayOffcut } from '#words/say-offcut.ts'
import { newId } from '#web/new-id.ts'
import type { Edit } from '#web/write.ts'

const prefix = 'kept.'

/** `620 × 260 from Plate`, for the tick and for what is said of it. */
export function sayLeftover(left: Leftover, { planned }: Pick<JobRecord, 'planned'>, units: Units): string {
  const { lengthMm, widthMm, count } = left
  return `${count > 1 ? `${count} of ` : ''}${wordLength(lengthMm, units)} × ${wordLength(widthMm, units)} from ${parentOf(left, planned!)?.name ?? 'the stock'}`
}

/** New offcuts, paid for with their stock; `kept`: the fields by which the job knows them again. */
export function keepEdits(lefts: readonly Leftover[], { name, planned }: Pick<JobRecord, 'name' | 'planned'>): { readonly edits: Edit[]; readonly kept: JobRecord['tools'] } {
  const kept: { [key: string]: string } = {}, edits = lefts.flatMap((left): Edit[] => {
    const parent = parentOf(left, planned!), record = newId()
    if (parent === undefined) return []
    kept[prefix + record] = String(left.count)
    return [{ kind: 'stock', record, fields: offcutFrom(left, parent, sayOffcut(parent.name, name)) }]
  })
  return { edits, kept }
}

/** The offcuts a job kept are no stock any more: it was not sawn after all. */
export function unkeepEdits(tools: JobRecord['tools']): Edit[] {
  return Object.keys(tools).flatMap((key): Edit[] => (key.startsWith(prefix) ? [{ kind: 'stock', record: key.slice(prefix.length), fields: { count: 0, retired: true } }] : []))
}

export const withoutKept = (tools: JobRecord['tools']): JobRecord['tools'] => Object.fromEntries(Object.entries(tools).filter(([key]) => !key.startsWith(prefix)))
