import type { CutBarsAnswer } from '#engine/make/cut-bars/answer-cut-bars.ts'
import type { CutPlateAnswer } from '#engine/make/cut-plate/answer-cut-plate.ts'
import { jobView, type JobView } from '#engine/make/job/job-view.ts'
import { attempt } from '#model/attempt.ts'
import type { CutList } from '#model/blank.ts'
import type { JobRecord } from '#model/job-record.ts'
import type { StepKind } from '#model/make-step.ts'
import { Refusal } from '#model/refusal.ts'
import { makingBooks } from '#reference/making-books.ts'
import { atOneMoment, type Store } from '#store/store.ts'
import { askHere } from '#tasks/make/ask-here.ts'
import { shopKnown } from '#tasks/make/shop-known.ts'
import type { AskSlow } from '#tasks/make/slow-calculations.ts'

/** A job in a list; an order that is still being written has no steps. `refused`: why it cannot be worked out. */
export type JobLine = Pick<JobRecord, 'id' | 'name' | 'state' | 'route'> & {
  readonly bars: number | null; readonly heightsMm: readonly number[]; readonly done: number; readonly steps: number; readonly next: StepKind | null; readonly hoursLeft: number | null; readonly refused: string | null
}

/** All jobs that are not dropped, in work first. */
export function listJobs(store: Store): Promise<readonly JobLine[]> {
  return atOneMoment(store, async (tx) => {
    const { jobs, checks, known } = await shopKnown(tx)
    return jobs.map((job): JobLine => {
      const { id, name, state, route } = job, none = { id, name, state, route, bars: null, heightsMm: [], done: 0, steps: 0, next: null, hoursLeft: null, refused: null }
      if (route === null) return none
      const view = attempt(() => jobView(job, checks, known, makingBooks))
      if (view instanceof Refusal) return { ...none, refused: view.code }
      const { plan, order } = view, done = plan.steps.filter((step) => step.state === 'done').length
      return { ...none, bars: order.bars, heightsMm: order.heightsMm, done, steps: plan.steps.length, next: plan.next, hoursLeft: plan.hours.left }
    }).toSorted((a, b) => Number(a.state === 'done') - Number(b.state === 'done') || Number(a.route === null) - Number(b.route === null) || (a.id < b.id ? -1 : 1))
  })
}

export type JobOfShop = { readonly job: JobRecord; readonly view: JobView }

/**
 * A job worked out, by its id, the beginning of it, or its name.
 *
 * @throws Refusal `unknown-record`; `way-not-chosen` while its order is being written; as `jobView`
 */
export function jobOfShop(store: Store, wanted: string): Promise<JobOfShop> {
  return atOneMoment(store, async (tx) => {
    const { jobs, checks, known } = await shopKnown(tx), name = wanted.trim().toLowerCase()
    const exact = jobs.filter((one) => one.id === wanted.trim() || one.name.toLowerCase() === name), found = exact.length > 0 ? exact : jobs.filter(({ id }) => name.length >= 4 && id.toLowerCase().startsWith(name)), [job] = found
    if (job === undefined || found.length > 1) throw new Refusal('unknown-record', { field: 'job', kind: 'job', given: wanted.slice(0, 60) })
    if (job.route === null) throw new Refusal('way-not-chosen', { given: job.name || job.id })
    return { job, view: jobView(job, checks, known, makingBooks) }
  })
}

/** How the stock of a job is cut: each case with its answer, in the order of `cuts.bars` and `cuts.plates`. */
export type CutsOfJob = { readonly cuts: CutList | null; readonly bars: readonly CutBarsAnswer[]; readonly plates: readonly CutPlateAnswer[] }

/** @throws Refusal as `jobOfShop`, and what `cut-bars` and `cut-plate` refuse */
export async function cutsOfJob(store: Store, wanted: string, { slowly = askHere, signal }: { readonly slowly?: AskSlow | undefined; readonly signal?: AbortSignal } = {}): Promise<CutsOfJob> {
  const { view: { route: { cuts } } } = await jobOfShop(store, wanted), bars: CutBarsAnswer[] = [], plates: CutPlateAnswer[] = []
  for (const { kerf, stock, pieces } of cuts?.bars ?? []) bars.push(await slowly('cut-bars', { kerf, pieces, stock: stock.map(({ length, available }) => ({ length, ...(available === null ? {} : { available }) })) }, signal) as CutBarsAnswer)
  for (const { plateWidth, kerf, pieces } of cuts?.plates ?? []) plates.push(await slowly('cut-plate', { plateWidth, kerf, pieces }, signal) as CutPlateAnswer)
  return { cuts, bars, plates }
}
