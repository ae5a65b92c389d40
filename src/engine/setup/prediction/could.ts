import type { InstrumentFields } from '#model/instrument-record.ts'
import type { Could } from '#engine/setup/tilt/input.ts'

/**
 * Standard uncertainties that the finest instrument of the shop could reach, from its step and its scatter: of a reading beside
 * another (bed, bar, station), and of a difference of two (lift, slope across the part). A micrometer measures bars only.
 *
 * @source GUM
 */
export function couldFrom(instruments: readonly Pick<InstrumentFields, 'figures' | 'retired'>[], widthMm: number): Could {
  const of = (...kinds: readonly string[]): number | null => {
    const all = instruments.flatMap(({ figures, retired }) => (!retired && kinds.includes(figures.is) && 'repeatabilityUm' in figures ? [Math.hypot(figures.resolutionUm / Math.sqrt(12), figures.repeatabilityUm ?? 0)] : []))
    return all.length === 0 ? null : Math.min(...all)
  }
  const barUm = of('indicator', 'micrometer'), bedUm = of('indicator'), liftUm = bedUm === null ? null : bedUm * Math.SQRT2
  return { barUm, stationUm: barUm, bedUm, liftUm, slopeUmPerMm: liftUm === null ? null : liftUm / widthMm }
}
