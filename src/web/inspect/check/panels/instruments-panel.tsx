import type { InstrumentIs } from '#model/instrument-record.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { changeForm } from '#web/inspect/draft/draft-edits.ts'
import { inUse } from '#web/inspect/draft/new-draft.ts'
import { GaugeSettings } from '#web/inspect/serial/gauge-settings.tsx'
import type { Gauge } from '#web/inspect/serial/use-gauge.ts'
import { Link } from '#web/parts/link.tsx'
import { SelectField } from '#web/parts/select-field.tsx'
import { sayFigures, sayKind } from '#web/shop/instruments/say-instrument.ts'

/** Instrument, plate and blocks out of the shop; without them nothing can be proved, which is said. */
export function InstrumentsPanel({ gauge }: { readonly gauge: Gauge }) {
  const { draft: { id, form } } = useCheckDesk(), onPlate = form.method === 'compare' || form.method === 'turn-over'
  return (
    <>
      <Tool is={onPlate ? 'indicator' : 'micrometer'} chosen={form.instrumentId} take={(instrumentId) => changeForm(id, { instrumentId })} />
      {onPlate ? <Tool is="plate" chosen={form.plateId} take={(plateId) => changeForm(id, { plateId })} /> : null}
      {onPlate && form.zeroOn === 'block' ? <Tool is="gauge blocks" chosen={form.blocksId} take={(blocksId) => changeForm(id, { blocksId })} /> : null}
      <GaugeSettings gauge={gauge} />
    </>
  )
}

function Tool({ is, chosen, take }: { readonly is: InstrumentIs['is']; readonly chosen: string | null; readonly take: (id: string | null) => void }) {
  const { facts: { instruments }, units } = useCheckDesk(), own = inUse(is, instruments), now = instruments.find(({ id }) => id === chosen)
  if (own.length === 0) return <p className="setup-lines">{`No ${sayKind(is, units)} in Shop yet: what it leaves uncertain is not known then.`} <Link to="/shop/instrument/new">Add it</Link></p>
  return (
    <SelectField
      label={sayKind(is, units)} value={chosen ?? ''} onChange={(id) => take(id === '' ? null : id)} note={now ? sayFigures(now.figures, units) : null}
      options={[{ value: '', label: 'not told' }, ...own.map(({ id, name }) => ({ value: id, label: name }))]}
    />
  )
}
