import { useMemo } from 'react'
import type { JobKnown } from '#engine/make/job/job-case.ts'
import { experienceOf, jobView, type JobView } from '#engine/make/job/job-view.ts'
import { attempt } from '#model/attempt.ts'
import type { JobRecord } from '#model/job-record.ts'
import type { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { makingBooks } from '#reference/making-books.ts'

type Learned = Pick<ShopSnapshot, 'checks'> & Pick<JobKnown, 'limitsUm' | 'experience'>
/** What each finished job taught, as long as neither it nor the checks change: a key typed into another job asks for all of them again. */
const learned = new WeakMap<JobRecord, Learned>()

/** What the shop knows beyond a job: its limits, and what came out of the jobs it finished. */
export function useJobKnown({ jobs, checks, shop: { limitsUm } }: ShopSnapshot): JobKnown {
  return useMemo(() => ({ limitsUm, experience: jobs.flatMap((job) => learnedFrom(job, checks, limitsUm)) }), [jobs, checks, limitsUm])
}

function learnedFrom(job: JobRecord, checks: ShopSnapshot['checks'], limitsUm: JobKnown['limitsUm']): JobKnown['experience'] {
  const known = learned.get(job)
  if (known?.checks === checks && known.limitsUm === limitsUm) return known.experience
  const experience = experienceOf([job], checks, limitsUm, makingBooks)
  learned.set(job, { checks, limitsUm, experience })
  return experience
}

/** A job worked out, or why it cannot be. */
export function useJobView(job: JobRecord, { checks }: ShopSnapshot, known: JobKnown): JobView | Refusal {
  return useMemo(() => attempt(() => jobView(job, checks, known, makingBooks)), [job, checks, known])
}
