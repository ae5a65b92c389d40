import { useMemo, useRef } from 'react'
import { setupSheetDrawing } from '#drafting/setup/sheet.ts'
import { sheetWords } from '#drafting/setup/sheet-words.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { describe } from '#web/setup/sheet/describe.ts'
import { Drawer } from '#web/setup/sheet/drawer.tsx'
import { PartFields, UnplacedCuts } from '#web/setup/sheet/part-fields.tsx'
import { useRoom } from '#web/setup/sheet/use-room.ts'
import type { SetupPicture } from '#drafting/setup/picture.ts'

/**
 * The sheet: section over plan to scale, with the numbers that are typed lying over it at their dimensions. On a narrow
 * screen the section stands alone and the same fields are a list below it.
 */
export function SetupSheet({ picture }: { readonly picture: SetupPicture }) {
  const desk = useDesk(), { units } = desk
  const element = useRef<HTMLDivElement>(null), room = useRoom(element)
  const title = describe(desk)
  const scene = useMemo(() => {
    if (room === null || room.widthMm < 1) return null
    const words = sheetWords('The setup', title, units.words)
    return setupSheetDrawing(picture, { widthMm: room.widthMm, heightMm: room.heightMm, units, words, ...(room.narrow ? { fields: 'none', views: 'section' } as const : {}) })
  }, [picture, room, units, title])
  return (
    <section className="setup-sheet" aria-label="Sheet" data-narrow={room?.narrow ? '' : undefined}>
      <div className="setup-stage">
        <div className="setup-room" ref={element}>{scene && <div className="setup-drawing"><Drawing scene={scene} /></div>}</div>
        <PartFields scene={room?.narrow ? null : scene} />
      </div>
      <UnplacedCuts scene={room?.narrow ? null : scene} />
      <Drawer />
    </section>
  )
}
