import { useState } from 'react'
import { hoursKey, readHours } from '#engine/make/job/actuals-from.ts'
import { type CutsFound, leftoversOf } from '#engine/make/job/leftovers-of-job.ts'
import { attempt } from '#model/attempt.ts'
import { Refusal } from '#model/refusal.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { sayStep } from '#words/say-make.ts'
import { sayLeftover } from '#web/make/job/keep-leftovers.ts'
import { stockBegun } from '#web/make/job/stock-deed.ts'
import type { StepProps } from '#web/make/job/step-card.tsx'
import { tickDeed, untickDeed } from '#web/make/job/tick-deeds.ts'
import { typeTool } from '#web/make/job-edits.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { Toggles } from '#web/parts/toggles.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { go } from '#web/router.ts'
import { shopNow } from '#web/shop-store.ts'
import { sayDay } from '#web/today.ts'
import { useUnits } from '#web/units.ts'
import { writeDeed } from '#web/write.ts'

/** What becomes of the stock when it is sawn: it comes off its count, and what is left of it is kept. */
type StockDone = 'count' | 'keep'

/** Done, by whom, when, and how long it took; taken back at one touch. */
export function TickStep({ shop, job, view, step, found }: StepProps & { readonly found: CutsFound }) {
  const units = useUnits(), { kind } = step, tick = job.done[kind], key = `hours.${kind}`, refused = view.refused[hoursKey(kind)], { steps } = view.plan
  const isLast = steps.every((one) => one.state === 'done' || one.kind === kind), at = steps.findIndex((one) => one.kind === kind)
  const begun = kind === 'saw' && tick === undefined ? stockBegun(shop, view.route.cuts?.begun ?? []) : [], [stock, setStock] = useState<readonly StockDone[]>(['count', 'keep'])
  const lefts = kind === 'saw' && tick === undefined ? leftoversOf(view, shop.bars.map(({ lengthMm }) => lengthMm), found) : [], saidLeft = lefts.map((left) => sayLeftover(left, job, units)).join(', ')
  const hours = job.tools[key] ?? '', amiss = hours.trim() === '' ? null : attempt(() => readHours(hours))
  const done = () => {
    const kept = stock.includes('keep') ? lefts : []
    const { deed, undo } = tickDeed({ shop, job, view, kind, hours, isLast, taken: stock.includes('count') ? begun : [], lefts: kept }), written = writeDeed(deed)
    offerUndo(`${sayStep(kind)}: done.${kept.length > 0 ? ` Kept as stock: ${saidLeft}.` : ''}`, () => { writeDeed(undo(written, shopNow().shop ?? shop)) })
    if (!isLast) go(`/make/job/${job.id}/${at + 2}`)
  }
  if (tick !== undefined) {
    return (
      <footer className="mk-tick">
        <p><span className="mark">✓</span> Done {sayDay(tick.atIso)}{tick.person === '' ? '' : ` by ${tick.person}`}{tick.hours.trim() === '' ? '' : `, ${tick.hours} h`}{refused ? <span className="status--danger"> {sayRefusal(refused, units)}</span> : null}</p>
        <button type="button" className="action" onClick={() => writeDeed(untickDeed({ shop, job, kind }))}>Not done after all</button>
      </footer>
    )
  }
  return (
    <footer className="mk-tick">
      {begun.length + lefts.length === 0 ? null : (
        <Toggles
          label="Stock" chosen={stock} onChange={setStock}
          options={[
            ...(begun.length > 0 ? [{ value: 'count' as const, label: `take off the count: ${begun.map(({ name, count }) => `${count} × ${name}`).join(', ')}` }] : []),
            ...(lefts.length > 0 ? [{ value: 'keep' as const, label: `keep as offcuts: ${saidLeft}` }] : []),
          ]}
        />
      )}
      <NumberField label="hours it took" value={hours} ifEmpty="not noted" onChange={(text) => typeTool(job.id, key, text)} error={amiss instanceof Refusal ? sayRefusal(amiss, units) : null} />
      <button type="button" className="action main" onClick={done}>{isLast ? (job.route === 'regrind' ? 'Done: they are reground' : 'Done: the job is made') : 'Done'}</button>
    </footer>
  )
}
