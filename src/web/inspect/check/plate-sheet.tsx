import { Fragment, useMemo, useRef } from 'react'
import { barOnPlate } from '#drafting/inspect/bar-on-plate.ts'
import { profileDrawing } from '#drafting/inspect/profile.ts'
import type { ReadCell } from '#engine/inspect/read-cell.ts'
import { ClosingZero } from '#web/inspect/check/closing-zero.tsx'
import { CellField } from '#web/inspect/check/cell-field.tsx'
import { CheckHead } from '#web/inspect/check/check-head.tsx'
import { useCheckDesk } from '#web/inspect/check/desk.ts'
import { LookFields } from '#web/inspect/check/look-fields.tsx'
import { plateDataFrom, sayPass } from '#web/inspect/check/plate-data.ts'
import { ReadingLine } from '#web/inspect/check/reading-line.tsx'
import { Drawing } from '#web/parts/drawing.tsx'
import { placedOn } from '#web/setup/sheet/spot-style.ts'
import { useRoom } from '#web/setup/sheet/use-room.ts'

/** Height of the profile; what the block on the plate takes of its width, so that stations and profile stand over each other. */
const profileMm = 26, blockAsideMm = 11

/**
 * The sheet: what the check is made with, the bars lying on the plate with a field over each station and the profile above,
 * and the zero again at the end. On a narrow screen the same fields are a list under the drawing.
 */
export function PlateSheet() {
  const desk = useCheckDesk(), { draft, read, facts, nameOf, current, units } = desk, { form } = draft
  const element = useRef<HTMLDivElement>(null), room = useRoom(element)
  const narrow = room?.narrow ?? false, widthMm = room?.widthMm ?? 0
  const data = useMemo(() => plateDataFrom({ draft, read, facts, nameOf, current, units }), [draft, read, facts, nameOf, current, units])
  const drawn = widthMm >= 1 && data.bars.length > 0 && form.method !== 'rock'
  const scene = useMemo(() => (drawn ? barOnPlate({ ...data, profile: null }, { widthMm, units, fields: narrow ? 'none' : 'spots' }) : null), [drawn, data, widthMm, narrow, units])
  const profile = useMemo(() => (drawn ? profileDrawing(
    { ...data.profile, title: 'Profile', description: data.description, lengthMm: Math.max(...data.bars.map(({ lengthMm }) => lengthMm)) },
    { widthMm: data.zero === 'block' ? widthMm - blockAsideMm : widthMm, heightMm: profileMm, units },
  ) : null), [drawn, data, widthMm, units])
  return (
    <section className="setup-sheet" aria-label="Sheet" data-narrow={narrow ? '' : undefined}>
      <CheckHead />
      <div className="insp-stage">
        {profile ? <div className="insp-profile"><div style={{ width: `${(profile.widthMm / widthMm) * 100}%` }}><Drawing scene={profile} /></div></div> : null}
        <div className="insp-room" ref={element}>
          {scene ? <div className="setup-drawing"><Drawing scene={scene} /></div> : null}
          {scene ? <div className="setup-fields">{read.cells.map((one, at) => (
            <Fragment key={one.cell.key}>
              {narrow && beginsPass(read.cells, at) ? <h3 className="insp-pass">{[nameOf(one.cell.bar), sayPass(one.cell, form)].filter((part) => part !== '').join(', ')}</h3> : null}
              <CellField one={one} placed={narrow ? undefined : placedOn(scene, one.cell.key)} />
            </Fragment>
          ))}</div> : null}
        </div>
        {data.bars.length === 0 ? <p className="nothing">No bar yet. Pick them from the rack, or scan their labels.</p> : null}
        {form.method === 'rock' ? <LookFields /> : null}
        <ClosingZero />
      </div>
      <ReadingLine />
    </section>
  )
}

/** Whether a new row of the drawing, and so a new part of the list, begins with a reading. */
const beginsPass = (cells: readonly ReadCell[], at: number): boolean => at === 0 || (['bar', 'line', 'face', 'repeat'] as const).some((part) => cells[at]!.cell[part] !== cells[at - 1]!.cell[part])
