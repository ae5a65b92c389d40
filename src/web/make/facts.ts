import { useMemo } from 'react'
import type { JobKnown } from '#engine/make/job/job-case.ts'
import { experienceOf, jobView, type JobView } from '#engine/make/job/job-view.ts'
import type { JobRecord } from '#model/job-record.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { makingBooks } from '#reference/making-books.ts'

/** What the shop knows beyond a job: its limits, and what came out of the jobs it finished. */
export function useJobKnown({ jobs, checks, shop: { limitsUm } }: ShopSnapshot): JobKnown {
  const done = jobs.filter(({ state }) => state === 'done'), seen = JSON.stringify(done.map(({ id, saw }) => [id, saw]))
  return useMemo(() => ({ limitsUm, experience: experienceOf(done, checks, limitsUm, makingBooks) }), [seen, checks, limitsUm]) // `seen` stands for `done`: a key typed into another job makes no new list.
}

/** A job worked out, or why it cannot be. */
export function useJobView(job: JobRecord, { checks }: ShopSnapshot, known: JobKnown): JobView | Refusal {
  return useMemo(() => attempt(() => jobView(job, checks, known, makingBooks)), [job, checks, known])
}

/** The value, or the refusal in its place. */
export function attempt<Value>(run: () => Value): Value | Refusal {
  try { return run() } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
}
