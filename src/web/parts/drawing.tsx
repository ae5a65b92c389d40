import { useId, useMemo } from 'react'
import type { Scene } from '#drafting/scene.ts'
import { svgFrom } from '#drafting/svg.ts'

/** A scene on the screen, scaled to the room it is given. On paper the same scene is painted black only, at its own size. */
export function Drawing({ scene, medium = 'screen' }: { readonly scene: Scene; readonly medium?: 'screen' | 'print' }) {
  const idPrefix = `d${useId().replace(/\W/g, '')}`
  const svg = useMemo(() => svgFrom(scene, { medium, idPrefix }), [scene, medium, idPrefix])
  return <div className="picture" dangerouslySetInnerHTML={{ __html: svg }} />
}
