import type { CardJob } from '#engine/make/job/card-cases.ts'
import type { JobView } from '#engine/make/job/job-view.ts'
import type { JobRecord } from '#model/job-record.ts'

/** A job whose route is chosen, as the cards take it. */
export const cardJobOf = (job: JobRecord, { plan, order, route }: JobView): CardJob => ({ form: job.form, tools: job.tools, planned: job.planned!, plan, order, route })
