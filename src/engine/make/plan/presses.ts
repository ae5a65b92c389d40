import type { Press, Worked } from '#model/make-plan.ts'
import type { Actuals, MadeBar, MakeStep } from '#model/make-step.ts'
import type { Route } from '#model/route.ts'
import { latest, readOf } from '#engine/make/plan/bars-left.ts'

/** Supports stand so far apart, as a share of the length of the bar. Common practice, no source. */
const spanShare = 0.8

/** Bars whose bow, as read last, is more than goes on after straightening. An even arc falls with the square of the length (geometry). */
export function pressesFor({ blanks, steps }: Route, made: readonly MadeBar[], actuals: Actuals): readonly Press[] {
  const straighten = steps.find(({ kind }) => kind === 'straighten')
  if (straighten === undefined) return []
  return made.flatMap(({ id, heightMm }) => (['edges', 'faces'] as const).flatMap((side): Press[] => {
    const size = blanks.find((blank) => blank.heightMm === heightMm)?.stages.find(({ after }) => after === 'rough the edges')?.size, bows = latest(actuals, id, readOf[side].bow)
    if (size === undefined || bows === null) return []
    const bowMm = bows.reduce((most, mm) => Math.max(most, mm), 0), mostMm = mostBow(straighten, side)
    if (mostMm === null || bowMm <= mostMm + 1e-9) return []
    const [widthMm, depthMm] = side === 'edges' ? [size.thicknessMm, size.heightMm] : [size.heightMm, size.thicknessMm]
    return [{ bar: id, side, spanMm: spanShare * size.lengthMm, widthMm, depthMm, wantedSetUm: Math.round(1e6 * bowMm * spanShare ** 2) / 1e3 }]
  }))
}

const mostBow = ({ reads }: MakeStep, side: Worked): number | null => reads.find(({ what }) => what === readOf[side].bow)?.most ?? null
