import { type ReactNode, useMemo, useRef } from 'react'
import type { Scene } from '#drafting/scene.ts'
import { Drawing } from '#web/parts/drawing.tsx'
import { useRoom } from '#web/setup/sheet/use-room.ts'

type Props = {
  /** Height as a share of the width, and in mm at most. */
  readonly tall?: number
  readonly mostMm?: number
  readonly draw: (room: { readonly widthMm: number; readonly heightMm: number }) => Scene
  /** What lies over it. */
  readonly over?: (scene: Scene) => ReactNode
}

/** A drawing made for the width it is given, at the size of the screen, so that its lettering stays as large as it is meant. */
export function RoomDrawing({ tall = 0.9, mostMm = 150, draw, over }: Props) {
  const element = useRef<HTMLDivElement>(null), room = useRoom(element)
  const widthMm = room?.widthMm ?? 0
  const scene = useMemo(() => (widthMm < 1 ? null : draw({ widthMm, heightMm: Math.min(mostMm, widthMm * tall) })), [draw, widthMm, mostMm, tall])
  return (
    <div className="beside-drawing" ref={element}>
      {scene && <Drawing scene={scene} />}
      {scene && over ? <div className="beside-fields">{over(scene)}</div> : null}
    </div>
  )
}
