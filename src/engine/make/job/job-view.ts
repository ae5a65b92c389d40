import type { Check } from '#model/check.ts'
import type { JobRecord } from '#model/job-record.ts'
import type { MakePlan } from '#model/make-plan.ts'
import type { MakingBooks } from '#model/making.ts'
import type { Order } from '#model/order.ts'
import type { Refusal } from '#model/refusal.ts'
import type { Experience, JobRoute, Route } from '#model/route.ts'
import { actualsFrom } from '#engine/make/job/actuals-from.ts'
import { type JobKnown, planCase } from '#engine/make/job/job-case.ts'
import { regrindView } from '#engine/make/regrind/regrind-view.ts'
import { answerPlan } from '#engine/make/plan/answer-plan.ts'

/** A job whose route is chosen, worked out from what was done and read; `refused`: texts that cannot be read, by their key. */
export type JobView = { readonly plan: MakePlan; readonly order: Order; readonly route: Route<JobRoute>; readonly refused: { readonly [key: string]: Refusal } }

/** @throws Refusal as `planCase` and `answerPlan`; of a regrind as `regrindView` */
export function jobView(job: JobRecord, checks: readonly Check[], known: JobKnown, books: MakingBooks): JobView {
  if (job.route === 'regrind') return regrindView(job, checks, known)
  const { actuals, refused } = actualsFrom(job, checks), { order, route, ...plan } = answerPlan(planCase(job, actuals, known), books)
  return { plan, order, route, refused }
}

/** What the shop learned from the jobs it finished, one entry for each that was read at the plate. */
export function experienceOf(jobs: readonly JobRecord[], checks: readonly Check[], limitsUm: JobKnown['limitsUm'], books: MakingBooks): readonly Experience[] {
  return jobs.flatMap((job) => {
    if (job.state !== 'done' || job.route === null || job.planned === null) return []
    const { experience } = jobView(job, checks, { limitsUm, experience: [] }, books).plan
    return experience === null ? [] : [experience]
  })
}
