import { useMemo, useRef, useState } from 'react'
import { shelfDrawing } from '#drafting/rack/shelf.ts'
import type { Units } from '#model/shop-record.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { Link } from '#web/parts/link.tsx'
import type { RackGroup } from '#web/rack/rack-bars.ts'
import { spotStyle } from '#web/setup/sheet/spot-style.ts'
import { type Room, useRoom } from '#web/setup/sheet/use-room.ts'
import { useUnits } from '#web/units.ts'

/** More would be a wall of lines; the search makes them fewer. */
const mostStanding = 150

/** The bars that were found, standing to scale on a shelf under a ruler. Open from the start where there is room for it. */
export function RackShelf({ groups }: { readonly groups: readonly RackGroup[] }) {
  const frame = useRef<HTMLDivElement>(null), room = useRoom(frame), units = useUnits()
  const [open, setOpen] = useState(() => matchMedia('(min-width: 760px)').matches)
  return (
    <details className="sum shelf" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Standing to scale</summary>
      <div ref={frame} className="shelf-frame">
        {!open ? null : groups.length > mostStanding ? <p className="small">{groups.length} are too many to draw: type a height, slot or name.</p>
          : room && room.widthMm > 0 && groups.length > 0 ? <Shelf groups={groups} room={room} units={units} /> : null}
      </div>
    </details>
  )
}

/** A touch on a bar opens it. The rows below do the same, larger and for everybody; these links are for the eye and the finger only. */
function Shelf({ groups, room, units }: { readonly groups: readonly RackGroup[]; readonly room: Room; readonly units: Units }) {
  const scene = useMemo(() => shelfDrawing({
    title: 'The rack', description: `${groups.length} pairs, sets and odd bars standing to scale, lowest first; the list below says the same in words.`, missingMm: [],
    groups: groups.flatMap(({ bars: [first, ...rest] }) => (first.calledMm === null ? [] : [{
      id: first.record.id, heightMm: first.calledMm, thicknessesMm: [first, ...rest].map(({ record }) => record.thicknessMm),
      slot: first.slot?.name ?? '', away: [first, ...rest].some(({ elsewhere }) => elsewhere !== null),
    }])),
  }, { widthMm: room.widthMm, units }), [groups, room.widthMm, units])
  return (
    <>
      <Drawing scene={scene} />
      <div aria-hidden="true">
        {scene.fields.map((spot) => <Link key={spot.name} to={`/rack/${spot.name}`} className="shelf-bar" tabIndex={-1} style={spotStyle({ spot, on: scene })}>{' '}</Link>)}
      </div>
    </>
  )
}
