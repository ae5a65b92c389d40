import type { DraftRecord } from '#model/check-draft.ts'
import type { InstrumentRecord } from '#model/instrument-record.ts'
import { changeForm } from '#web/inspect/draft/draft-edits.ts'
import { inUse } from '#web/inspect/draft/new-draft.ts'
import { Link } from '#web/parts/link.tsx'
import { SelectField } from '#web/parts/select-field.tsx'

/** With which micrometer; without one there are heights, and no uncertainty. */
export function MicrometerField({ draft, instruments }: { readonly draft: DraftRecord; readonly instruments: readonly InstrumentRecord[] }) {
  const micrometers = inUse('micrometer', instruments)
  if (micrometers.length === 0) return <p className="small">No micrometer is kept in Shop: the readings count, their uncertainty is not known. <Link to="/shop/instrument/new">Add it</Link></p>
  return (
    <SelectField
      label="micrometer" value={draft.form.instrumentId ?? ''} onChange={(id) => changeForm(draft.id, { instrumentId: id || null })}
      options={[{ value: '', label: 'not named' }, ...micrometers.map(({ id, name }) => ({ value: id, label: name }))]}
    />
  )
}
