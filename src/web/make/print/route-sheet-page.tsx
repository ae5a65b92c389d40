import { useMemo } from 'react'
import { routeSheetPages } from '#drafting/make/route-sheet.ts'
import type { JobRecord } from '#model/job-record.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { useJobKnown, useJobView } from '#web/make/facts.ts'
import { routeSheetFrom } from '#web/make/print/route-sheet-data.ts'
import { NothingToPrint, PrintFrame } from '#web/parts/print-frame.tsx'
import { today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { useTold } from '#web/use-told.ts'

/** All steps on paper, to be filled in by pencil; each print is kept as told. */
export function RouteSheetPage({ shop, job }: { readonly shop: ShopSnapshot; readonly job: JobRecord }) {
  const units = useUnits(), view = useJobView(job, shop, useJobKnown(shop)), day = today(), back = { to: `/make/job/${job.id}`, name: 'Job' }, { paper } = shop.shop
  const data = useMemo(() => (view instanceof Refusal ? null : routeSheetFrom({ job, shop, view, units, day })), [job, shop, view, units, day])
  const told = useMemo(() => data && { ...data, steps: data.steps.map(({ picture: _picture, ...step }) => step) }, [data]) // The drawings follow from the sizes beside them.
  useTold({ jobId: job.id }, 'route sheet', told)
  return data === null ? <NothingToPrint why="The plan cannot be worked out" back={back} /> : <PrintFrame title="Route sheet" back={back} size={paper} pages={routeSheetPages(data, paper)} />
}
