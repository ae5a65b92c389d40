import type { ReadCell } from '#engine/inspect/read-cell.ts'
import { sayFinding } from '#words/say-finding.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { typeReading } from '#web/inspect/draft/draft-edits.ts'
import { LengthField } from '#web/parts/length-field.tsx'
import { useUnits } from '#web/units.ts'

type Props = { readonly draftId: string; readonly one: ReadCell; readonly label: string; readonly more: string }

/** A height read with the micrometer, kept at each key; a slip of the unit is asked about below it, one touch puts it right. */
export function HeightCell({ draftId, one: { cell, text, wrong, asks }, label, more }: Props) {
  const units = useUnits(), meant = asks?.facts['meant']
  return (
    <div className="height-cell">
      <LengthField
        label={label} more={more} value={text} onChange={(typed) => typeReading(draftId, cell.key, typed)}
        {...(asks || wrong ? { note: asks ? sayFinding(asks, units) : sayRefusal(wrong!, units) } : {})}
      />
      {typeof meant === 'string' ? <button type="button" className="press" onClick={() => typeReading(draftId, cell.key, meant)}>Yes, {meant}</button> : null}
    </div>
  )
}
