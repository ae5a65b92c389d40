import { type RefObject, useLayoutEffect, useState } from 'react'

/** The room a drawing has on the screen, in mm of a screen of 96 px to the inch; null until it was measured. */
export type Room = { readonly widthMm: number; readonly heightMm: number; readonly narrow: boolean }

const mmPerPx = 25.4 / 96
/** Less than this, across or up, and no field has its place on the drawing. */
const narrowPx = 560, lowPx = 230

/** Follows the size of an element. Whole pixels, so that a drawing is not made anew for a fraction of one. */
export function useRoom(element: RefObject<HTMLElement | null>): Room | null {
  const [px, setPx] = useState<readonly [width: number, height: number] | null>(null)
  useLayoutEffect(() => {
    const measured = element.current
    if (!measured) return undefined
    const measure = () => setPx((before) => {
      const width = measured.clientWidth, height = measured.clientHeight
      return before?.[0] === width && before[1] === height ? before : [width, height]
    })
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(measured)
    return () => observer.disconnect()
  }, [element])
  return px && { widthMm: px[0] * mmPerPx, heightMm: px[1] * mmPerPx, narrow: px[0] < narrowPx || px[1] < lowPx }
}
