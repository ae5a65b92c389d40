import { useState } from 'react'
import { plannedWithOf } from '#engine/make/job/planned-with.ts'
import { regrindJob } from '#engine/make/regrind/regrind-job.ts'
import { barsFrom } from '#engine/rack/bar-from.ts'
import type { RegrindTyped } from '#engine/rack/regrind/regrind-typed.ts'
import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { type Use, uses } from '#model/wishes.ts'
import { beginJob } from '#web/make/job-edits.ts'
import { Choice } from '#web/parts/choice.tsx'
import { StatusLine } from '#web/parts/status-line.tsx'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { nameOfBars } from '#web/rack/say-bar.ts'
import { go } from '#web/router.ts'
import { today } from '#web/today.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly shop: ShopSnapshot; readonly bars: readonly RackBar[]; readonly typed: RegrindTyped; readonly low: { readonly [bar: string]: string }; readonly sayAbout: (refusal: Refusal) => string }

/** The regrind as a job of Make: its steps, its route sheet, and the plate at the end. */
export function MakeRegrind({ shop, bars, typed, low, sayAbout }: Props) {
  const units = useUnits(), [use, setUse] = useState<Use>('milling')
  const job = attempt(() => regrindJob(bars.map(({ record }) => record.id), { records: shop.bars, rack: barsFrom({ ...shop, today: today() }, { viseId: null }), jobs: shop.jobs }, {
    typed, low, use, name: nameOfBars(bars, units), units, planned: plannedWithOf(shop, null, today()),
  }))
  if (job instanceof Refusal) return <StatusLine>It cannot be a job yet. {sayAbout(job)}</StatusLine>
  return (
    <>
      <Choice label="Good for, afterwards" value={use} onChange={setUse} options={uses.map((one) => ({ value: one, label: one }))} />
      <div className="rack-ways"><button type="button" className="action main" onClick={() => go(`/make/job/${beginJob(job)}`)}>Make a job of it</button></div>
    </>
  )
}
