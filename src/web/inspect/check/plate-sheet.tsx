import { useMemo, useRef } from 'react'
import { barOnPlate } from '#drafting/inspect/bar-on-plate.ts'
import { ClosingZero } from '#web/inspect/check/closing-zero.tsx'
import { CellField } from '#web/inspect/check/cell-field.tsx'
import { CheckHead } from '#web/inspect/check/check-head.tsx'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { LookFields } from '#web/inspect/check/look-fields.tsx'
import { plateDataFrom } from '#web/inspect/check/plate-data.ts'
import { ReadingLine } from '#web/inspect/check/reading-line.tsx'
import { Drawing } from '#web/parts/drawing.tsx'
import { placedOn } from '#web/setup/sheet/spot-style.ts'
import { useRoom } from '#web/setup/sheet/use-room.ts'

/**
 * The sheet: what the check is made with, the bars lying on the plate with a field over each station and the profile above,
 * and the zero again at the end. On a narrow screen the same fields are a list under the drawing.
 */
export function PlateSheet() {
  const desk = useCheckDesk(), { draft, read, facts, nameOf, current, units } = desk, { form } = draft
  const element = useRef<HTMLDivElement>(null), room = useRoom(element)
  const narrow = room?.narrow ?? false, widthMm = room?.widthMm ?? 0
  const data = useMemo(() => plateDataFrom({ draft, read, facts, nameOf, current, units }), [draft, read, facts, nameOf, current, units])
  const scene = useMemo(() => (widthMm < 1 || data.bars.length === 0 || form.method === 'rock' ? null : barOnPlate(data, { widthMm, units, fields: narrow ? 'none' : 'spots', profileMm: 32 })), [data, widthMm, narrow, units, form.method])
  return (
    <section className="setup-sheet" aria-label="Sheet" data-narrow={narrow ? '' : undefined}>
      <CheckHead />
      <div className="insp-stage">
        <div className="insp-room" ref={element}>
          {scene ? <div className="setup-drawing"><Drawing scene={scene} /></div> : null}
          {scene ? <div className="setup-fields">{read.cells.map((one) => <CellField key={one.cell.key} one={one} placed={narrow ? undefined : placedOn(scene, one.cell.key)} />)}</div> : null}
        </div>
        {data.bars.length === 0 ? <p className="nothing">No bar yet. Pick them from the rack, or scan their labels.</p> : null}
        {form.method === 'rock' ? <LookFields /> : null}
        <ClosingZero />
      </div>
      <ReadingLine />
    </section>
  )
}
