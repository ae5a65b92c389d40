import type { Leftover } from '#engine/make/blanks/leftovers.ts'
import type { JobView } from '#engine/make/job/job-view.ts'
import { eventsOfStep, undoingOfStep } from '#engine/make/regrind/step-events.ts'
import type { JobRecord } from '#model/job-record.ts'
import type { StepKind } from '#model/make-step.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { deviceNow } from '#web/device.ts'
import { barsDeed } from '#web/make/job/bars-deed.ts'
import { keepEdits, unkeepEdits, withoutKept } from '#web/make/job/keep-leftovers.ts'
import { type StockCount, stockEdits, stockTaken, toolsWith } from '#web/make/job/stock-deed.ts'
import { nowIso } from '#web/new-id.ts'
import type { Doing } from '#web/write.ts'

/** A step to be ticked off; `taken`: stock that comes off its count, `lefts`: what is left of it and kept. */
type Ticking = {
  readonly shop: ShopSnapshot
  readonly job: JobRecord
  readonly view: JobView
  readonly kind: StepKind
  readonly hours: string
  readonly isLast: boolean
  readonly taken: readonly StockCount[]
  readonly lefts: readonly Leftover[]
}

/** What ticking a step off writes, and what takes it back, given the ids of the events that were written and the shop as it is then. */
export type Ticked = { readonly deed: Doing; readonly undo: (written: readonly string[], shop: ShopSnapshot) => Doing }

/** The step done: by whom, when, how long it took. Sawing brings the bars into the rack; the last step ends the job. */
export function tickDeed({ shop, job, view, kind, hours, isLast, taken, lefts }: Ticking): Ticked {
  const cut = job.bars.length === 0 && kind === 'saw' ? barsDeed(job, view) : null, happened = eventsOfStep(job, kind)
  const { edits: keeping, kept } = keepEdits(lefts, job), isStock = taken.length + keeping.length > 0
  const done = { ...job.done, [kind]: { hours, person: deviceNow().person?.initials ?? '', atIso: nowIso() } }
  const fields = { done, ...(cut ? { bars: cut.made } : {}), ...(isStock ? { tools: { ...toolsWith(job, taken), ...kept } } : {}), ...(isLast ? { state: 'done' as const } : {}) }
  const before = { done: job.done, state: 'open' as const, ...(cut ? { bars: [] } : {}), ...(isStock ? { tools: job.tools } : {}) }
  const added = cut?.events ?? []
  return {
    deed: {
      ...cut, events: [...added, ...happened],
      edits: [...(cut?.edits ?? []), { kind: 'job', record: job.id, fields }, ...stockEdits(shop, taken, 'take'), ...keeping],
    },
    undo: (written, now) => ({
      edits: [{ kind: 'job', record: job.id, fields: before }, ...stockEdits(now, taken, 'give back'), ...unkeepEdits(kept)],
      events: [
        ...added.filter((one) => one.kind === 'added').map(({ bar }) => ({ bar, kind: 'gone' as const, undoes: null, note: '' })),
        ...happened.map(({ bar }, at) => ({ bar, kind: 'undone' as const, undoes: written[added.length + at]!, note: '' })),
      ],
    }),
  }
}

/** A ticked step not done after all: stock and bars are again what they were. */
export function untickDeed({ shop, job, kind }: Pick<Ticking, 'shop' | 'job' | 'kind'>): Doing {
  const { [kind]: tick, ...done } = job.done, back = kind === 'saw' ? stockTaken(job, shop) : [], kept = kind === 'saw' ? unkeepEdits(job.tools) : []
  const tools = back.length + kept.length > 0 ? { tools: withoutKept(toolsWith(job, [])) } : {}
  return {
    edits: [{ kind: 'job', record: job.id, fields: { done, state: 'open', ...tools } }, ...stockEdits(shop, back, 'give back'), ...kept],
    events: tick === undefined ? [] : undoingOfStep(job, kind, tick.atIso, shop.events),
  }
}
