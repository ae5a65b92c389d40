import type { ReadCell } from '#engine/inspect/read-cell.ts'
import { sayRefusal } from '#words/say-refusal.ts'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { sayPass } from '#web/inspect/check/plate-data.ts'
import { typeReading } from '#web/inspect/draft/draft-edits.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { type Placed, spotStyle } from '#web/setup/sheet/spot-style.ts'

/** One reading at its station: over the drawing, or in the list with what it means below. */
export function CellField({ one, placed }: { readonly one: ReadCell; readonly placed?: Placed | undefined }) {
  const { draft: { id, form }, read, units, nameOf, current, enter } = useCheckDesk(), { cell, text, wrong, asks } = one, { key } = cell
  const typing = current === key, error = wrong && !typing ? sayRefusal(wrong, units, nameOf) : null
  const pass = sayPass(cell, form)
  return (
    <div
      data-cell={key} className={placed ? 'setup-field setup-spot' : 'setup-field'} style={placed && spotStyle(placed)}
      data-half={typing && wrong ? '' : undefined} data-asks={asks ? '' : undefined} onFocus={() => enter(key)} onBlur={() => enter(null)}
    >
      <NumberField
        label={placed ? read.bareUnit : `${cell.station + 1} · ${read.bareUnit}`} more={`, ${nameOf(cell.bar)}, station ${cell.station + 1}${pass === '' ? '' : `, ${pass}`}`}
        value={text} error={error}
        onChange={(next) => typeReading(id, key, next)}
      />
    </div>
  )
}
