import type { CSSProperties } from 'react'
import type { FieldSpot, Scene } from '#drafting/scene.ts'

/** A spot of a drawing, with the drawing it lies on. */
export type Placed = { readonly spot: FieldSpot; readonly on: Pick<Scene, 'widthMm' | 'heightMm'> }

/** Where something named lies over a drawing; undefined where the drawing has no place for it. */
export function placedOn(scene: Scene | null, name: string): Placed | undefined {
  const spot = scene?.fields.find((field) => field.name === name)
  return scene && spot ? { spot, on: scene } : undefined
}

/** The same as shares of the drawing, so that both grow together. */
export function spotStyle({ spot, on }: Placed): CSSProperties {
  const share = (part: number, whole: number): string => `${(part / whole) * 100}%`
  return {
    left: share(spot.at[0] - spot.widthMm / 2, on.widthMm), top: share(spot.at[1] - spot.heightMm / 2, on.heightMm),
    width: share(spot.widthMm, on.widthMm), height: share(spot.heightMm, on.heightMm),
  }
}
