import { type CardField, usualFields } from '#engine/make/job/card-fields.ts'
import type { JobRecord } from '#model/job-record.ts'
import { wordNumber } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { typeTool } from '#web/make/job-edits.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { useUnits } from '#web/units.ts'

type Props = { readonly job: JobRecord; readonly field: CardField; readonly label: string; readonly more?: string; readonly ifEmpty?: string; readonly refused?: unknown }

/** A field of a step card; what is usual stands faintly in it until something else is typed. */
export function ToolField({ job, field, label, more, ifEmpty, refused }: Props) {
  const units = useUnits(), usual = usualFields[field], wrong = refused instanceof Refusal && refused.facts['field'] === field ? refused : null
  return <NumberField label={label} {...(more ? { more } : {})} value={job.tools[field] ?? ''} ifEmpty={ifEmpty ?? (usual === undefined ? 'as usual' : wordNumber(usual, units.decimalMark))} onChange={(text) => typeTool(job.id, field, text)} error={wrong ? sayRefusal(wrong, units) : null} />
}
