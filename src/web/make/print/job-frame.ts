import type { SheetFrame } from '#drafting/sheet-pages.ts'
import type { JobRecord } from '#model/job-record.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { routeWords } from '#words/say-make.ts'
import { sayJob, sayOrder } from '#web/make/say-job.ts'
import { sayDay } from '#web/today.ts'

export type PrintAsked = { readonly job: JobRecord; readonly shop: ShopSnapshot; readonly units: Units; readonly day: string }

/** What stands on every sheet of a job. */
export function jobFrame(title: string, { job, shop, units, day }: PrintAsked): SheetFrame {
  const called = sayJob(job, units)
  return {
    title, heading: called, description: `${title} of ${called}`, under: `${title} · ${routeWords[job.route!]} · ${sayOrder(job, units)}`, code: { label: 'job', value: job.id.slice(0, 8) },
    foot: [[{ label: 'Shop', value: shop.shop.name, share: 0.4 }, { label: 'Printed on', value: sayDay(day), share: 0.22 }, { label: 'Wanted by', value: job.form.due ?? '', share: 0.22 }, { label: 'Initials', value: '', share: 0.16 }]],
  }
}
