import type { JobKnown } from '#engine/make/job/job-case.ts'
import { experienceOf } from '#engine/make/job/job-view.ts'
import type { Check } from '#model/check.ts'
import type { JobRecord } from '#model/job-record.ts'
import { makingBooks } from '#reference/making-books.ts'
import { checksOf } from '#store/checks.ts'
import { recordOf, recordsOf } from '#store/records.ts'
import type { Store } from '#store/store.ts'

/** What is known beyond one job: the shop's limits and experience, all jobs that are not dropped, all checks. */
export type ShopKnown = { readonly known: JobKnown; readonly jobs: readonly JobRecord[]; readonly checks: readonly Check[] }

export async function shopKnown(store: Store): Promise<ShopKnown> {
  const { limitsUm } = await recordOf(store, 'shop', 'shop'), jobs = (await recordsOf(store, 'job')).filter(({ state }) => state !== 'dropped'), checks = await checksOf(store)
  return { known: { limitsUm, experience: experienceOf(jobs, checks, limitsUm, makingBooks) }, jobs, checks }
}
