import { Refusal } from '#model/refusal.ts'
import { changeBar } from '#web/inspect/box/box-edits.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { TextField } from '#web/parts/text-field.tsx'

/** What has to be known of the bars that come into the rack with this check. */
export function NewBarFields() {
  const { draft, read, nameOf } = useCheckDesk()
  return draft.form.bars.map((bar, at) => {
    if (!bar.isNew) return null
    const said = read.wrong[`bars[${at}].length`], called = nameOf(bar.bar)
    return (
      <section key={bar.bar} className="insp-new-bar field-list" aria-label={`New: ${called}`}>
        <TextField label="marked on it" value={bar.name} onChange={(name) => changeBar(draft, bar.bar, { name })} maxLength={36} />
        <LengthField label="thickness" more={`of ${called}`} value={bar.thickness} onChange={(thickness) => changeBar(draft, bar.bar, { thickness })} />
        <LengthField label="length" more={`of ${called}`} value={bar.length} onChange={(length) => changeBar(draft, bar.bar, { length })} refused={said ? new Refusal(said.code, said.facts) : undefined} />
      </section>
    )
  })
}
