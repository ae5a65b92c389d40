import { gapsOf, type Plane, type SupportPoint } from '#engine/setup/seat/plane.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** One way the part can lie along the jaws: its plane, every point that touches (rising), and from where to where along it is carried. */
export type Link = { readonly plane: Plane; readonly contacts: readonly number[]; readonly fromMm: number; readonly toMm: number }

/**
 * All ways a part can lie whose slope across is given: the upper hull of (x, z − c y), from left to right.
 *
 * @param points  not all at one place along
 * @source SEAT-MODEL
 */
export function chainOf(points: readonly SupportPoint[], cUmPerMm: number): readonly Link[] {
  const links: Link[] = [], levels = points.map(({ yMm, zUm }) => zUm - cUmPerMm * yMm), lastMm = Math.max(...points.map(({ xMm }) => xMm))
  const xOf = (i: number): number => points[i]!.xMm
  const ends = points.flatMap(({ xMm }, i) => (xMm <= Math.min(...points.map((point) => point.xMm)) + touchMm ? [i] : []))
  let at = ends.reduce((best, i) => (levels[i]! > levels[best]! ? i : best))
  while (xOf(at) < lastMm - touchMm) {
    const ahead = points.flatMap((_, i) => (xOf(i) > xOf(at) + touchMm ? [i] : []))
    const rise = (i: number): number => (levels[i]! - levels[at]!) / (xOf(i) - xOf(at))
    const steepest = ahead.reduce((best, i) => (rise(i) > rise(best) ? i : best))
    const rough = laid(points, levels, at, steepest, cUmPerMm), furthest = rough.contacts.reduce((best, i) => (xOf(i) > xOf(best) ? i : best), steepest)
    links.push(laid(points, levels, at, furthest, cUmPerMm))
    at = furthest
  }
  return links
}

function laid(points: readonly SupportPoint[], levels: readonly number[], from: number, to: number, cUmPerMm: number): Link {
  const fromMm = points[from]!.xMm, toMm = points[to]!.xMm, bUmPerMm = (levels[to]! - levels[from]!) / (toMm - fromMm)
  const plane = { aUm: levels[from]! - bUmPerMm * fromMm, bUmPerMm, cUmPerMm }
  return { plane, contacts: gapsOf(plane, points).flatMap((gapUm, i) => (gapUm <= 0 ? [i] : [])), fromMm, toMm }
}
