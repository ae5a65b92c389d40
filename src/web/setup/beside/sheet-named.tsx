import { newId, nowIso } from '#web/new-id.ts'
import { TextField } from '#web/parts/text-field.tsx'

/** What a sheet is called by, and its id once it is printed; null: not printed yet. */
export type SheetNamed = { readonly part: string; readonly operation: string; readonly printed: { readonly id: string; readonly atIso: string } | null }
export const notNamed: SheetNamed = { part: '', operation: '', printed: null }

type Props = { readonly named: SheetNamed; readonly onChange: (named: SheetNamed) => void; readonly isReady: boolean }

/** Part and operation as they stand on the sheet, and the way to it. */
export function SheetFields({ named, onChange, isReady }: Props) {
  const print = () => onChange({ ...named, printed: { id: newId(), atIso: nowIso() } })
  return (
    <fieldset className="boxed"><legend>Sheet</legend>
      <div className="field-list">
        <TextField label="part number" value={named.part} maxLength={80} onChange={(part) => onChange({ ...named, part })} />
        <TextField label="operation" value={named.operation} maxLength={80} onChange={(operation) => onChange({ ...named, operation })} />
      </div>
      <div className="actions"><button type="button" className="action main" disabled={!isReady} onClick={print}>Print sheet</button></div>
    </fieldset>
  )
}
