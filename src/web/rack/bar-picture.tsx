import { useMemo, useRef } from 'react'
import { barDrawing } from '#drafting/rack/bar-card.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { nameOfBar } from '#web/rack/say-bar.ts'
import { useRoom } from '#web/setup/sheet/use-room.ts'
import { useUnits } from '#web/units.ts'

const heightMm = 36

/** The bar from the side and from its end, with its three sizes. */
export function BarPicture({ bar }: { readonly bar: RackBar }) {
  const frame = useRef<HTMLDivElement>(null), widthMm = useRoom(frame)?.widthMm ?? 0, units = useUnits()
  const scene = useMemo(() => (bar.calledMm === null || widthMm < 40 ? null : barDrawing({
    title: nameOfBar(bar, units), description: `Bar ${nameOfBar(bar, units)} from the side and from its end, with height, thickness and length.`, label: nameOfBar(bar, units),
    heightMm: bar.calledMm, thicknessMm: bar.record.thicknessMm, lengthMm: bar.record.lengthMm, markedEnd: 'marked end',
  }, { widthMm, heightMm, units })), [bar, widthMm, units])
  return <div className="bar-picture"><div ref={frame}>{scene ? <Drawing scene={scene} /> : null}</div></div>
}
