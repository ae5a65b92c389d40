import { pointsOn, slopeFrom, type Support } from '#engine/setup/seat/support.ts'
import type { Contributor, Spread, TiltQuestion, TiltSource } from '#engine/setup/tilt/tilt.ts'

/** Standard uncertainties that the shop's own instrument could reach; null where nobody said. */
export type Could = { readonly barUm: number | null; readonly stationUm: number | null; readonly slopeUmPerMm: number | null; readonly bedUm: number | null; readonly liftUm: number | null }

type Heights = Pick<TiltQuestion, 'part' | 'spots' | 'nominalUm' | 'jawSlopeUmPerMm' | 'sources'>

/**
 * What the prediction is drawn from: heights of the bars with their uncertainty, bed, and the closed jaws.
 *
 * Held by the jaw, its slope, the part's squareness and the lift make the slope across. Free, the lift turns the part as it
 * lies: it is put into the heights, rising from the fixed jaw.
 */
export function tiltInputFrom(support: Support, held: boolean, could: Could): Heights {
  const { part, bars, liftUm, bedUUm } = support, points = pointsOn(support), none = points.map(() => 0)
  const lifted = points.map(({ yMm }) => yMm / part.widthMm), onBar = (b: number) => points.map(({ bar }) => Number(bar === b))
  const source = (by: Contributor, sd: number, onPoints: readonly number[], onSlope: number, least: number | null): TiltSource[] =>
    sd === 0 ? [] : [{ by, spread: { dist: 'normal', sd }, onPoints, onSlope, could: normalOr(least) }]
  return {
    part, spots: points, nominalUm: points.map(({ zUm }, i) => zUm + (held ? 0 : liftUm.value * lifted[i]!)), jawSlopeUmPerMm: held ? slopeFrom(support).value : null,
    sources: [
      ...bars.flatMap(({ uUm }, bar) => source({ of: 'bar', bar }, uUm, onBar(bar), 0, could.barUm)),
      ...points.flatMap(({ bar }, i) => source({ of: 'bar', bar }, bars[bar]!.stationUUm, points.map((_, k) => Number(k === i)), 0, could.stationUm)),
      ...bars.flatMap((_, bar) => source({ of: 'bed', bar: null }, bedUUm, onBar(bar), 0, could.bedUm)),
      ...(held ? [support.jawSlopeUmPerMm, support.squarenessUmPerMm].flatMap(({ u }) => source({ of: 'jaw-slope', bar: null }, u, none, 1, could.slopeUmPerMm)) : []),
      ...source({ of: 'jaw-lift', bar: null }, liftUm.u, held ? none : lifted, held ? 1 / part.widthMm : 0, could.liftUm),
    ],
  }
}

export const normalOr = (sd: number | null): Spread | null => (sd === null ? null : { dist: 'normal', sd })
