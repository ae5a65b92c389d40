import { shapeOf } from '#drafting/items.ts'
import type { Item, Point } from '#drafting/scene.ts'
import type { Frame } from '#drafting/setup/frame.ts'
import { shownAlong } from '#drafting/setup/plan.ts'
import type { Shown } from '#drafting/setup/shown.ts'

const highMm = 3, widestMm = 3.4, insetMm = 0.9

/** The sign for a marked end, its tip down to it, and how wide it is drawn. */
export const markAt = ([x, y]: Point, widthMm = widestMm): Item => shapeOf([[x - widthMm / 2, y - highMm], [x + widthMm / 2, y - highMm], [x, y]], 'none', 'ink')

/** On each bar in the plan the sign for its marked end, at its left end or where the drawing breaks it off. */
export function markedEnds(shown: Shown, frame: Frame): readonly Item[] {
  return shown.bars.flatMap(({ place, acrossMm, lengthMm }) => {
    const [lowMm, highestMm] = shownAlong(frame, shown, [place.xMm, place.xMm + lengthMm])
    if (highestMm <= lowMm) return []
    const [x, y] = frame.inPlan(lowMm, place.yMm + acrossMm / 2)
    return [markAt([x, y - insetMm], Math.min(widestMm, acrossMm * frame.scale))]
  })
}
