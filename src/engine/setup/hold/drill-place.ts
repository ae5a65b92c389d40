import type { Bar } from '#model/bar.ts'
import type { Hole } from '#model/cut.ts'
import type { Choice, SetupQuestion } from '#model/setup.ts'
import { betweenBars } from '#engine/setup/between-bars.ts'
import { standingOf } from '#engine/setup/standing.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** The largest drill of a setup, and the worst that any of its drilled holes has under it. */
export type DrillPlace = { readonly largestMm: number | null; readonly carried: boolean; readonly betweenBarsMm: number | null }

/**
 * Where a drill presses. A hole whose middle lies outside what the bars span has nothing under it that carries; one of which
 * only the distance across is known may stand at the worst place along. While no hole is drilled: the middle between the bars.
 */
export function drillPlaceOf({ cuts, part }: Pick<SetupQuestion, 'cuts' | 'part'>, choice: Pick<Choice, 'bars' | 'stand' | 'stacked' | 'places' | 'base'>, bars: ReadonlyMap<string, Bar>): DrillPlace {
  const drilled = cuts.filter((cut): cut is Hole => cut.kind === 'hole' && cut.tool === 'drill'), { base } = choice
  const free = betweenBars(standingOf(choice, bars), 'carrying'), freeMm = free === null ? null : free.toMm - free.fromMm
  if (drilled.length === 0) return { largestMm: null, carried: true, betweenBarsMm: freeMm }
  const within = (fromMm: number, mm: number, toMm: number) => mm >= fromMm - touchMm && mm <= toMm + touchMm
  const isCarried = ({ xMm, yMm }: Hole) => base === null || (within(base.y0Mm, yMm, base.y1Mm) && (xMm === null ? base.x0Mm <= touchMm && base.x1Mm >= (part.alongJawsMm ?? 0) - touchMm : within(base.x0Mm, xMm, base.x1Mm)))
  return {
    largestMm: Math.max(...drilled.map(({ diameterMm }) => diameterMm)), carried: drilled.every(isCarried),
    betweenBarsMm: free !== null && drilled.some(({ yMm }) => yMm > free.fromMm && yMm < free.toMm) ? freeMm : null,
  }
}
