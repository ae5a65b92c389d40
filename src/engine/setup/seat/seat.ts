import { chainOf } from '#engine/setup/seat/chain.ts'
import { facetsOf } from '#engine/setup/seat/facets.ts'
import { areaAround, depthMm } from '#engine/setup/seat/outline.ts'
import { gapsOf, heightOf, type Plane, type SupportPoint } from '#engine/setup/seat/plane.ts'
import { sharesOf } from '#engine/setup/seat/shares.ts'
import type { Point } from '#engine/setup/table/hull.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** The part in the plan, and where it is pressed down. */
export type SeatPart = { readonly lengthMm: number; readonly widthMm: number; readonly loadMm: Point }

/** `jawSlopeUmPerMm`: the slope across that the fixed jaw gives the part; null where nothing but the points holds it. */
export type SeatQuestion = { readonly part: SeatPart; readonly points: readonly SupportPoint[]; readonly jawSlopeUmPerMm: number | null }

/** Tilt of the underside over the whole part, rising along x and from the fixed jaw across. */
export type Tilt = { readonly tiltAlongUm: number; readonly tiltAcrossUm: number }
export type WayToLie = Tilt & { readonly plane: Plane; readonly contacts: readonly number[] }

/**
 * `seated`: one plane, every point that touches, the gap at each point, and the parts of the load they carry where statics
 * alone settles them. `tie`: the load stands over a ridge or peak, and the part rocks between the ways listed. `on-edge`: the
 * load stands over the edge of what carries it. `tips`: beyond it. `collinear`: nothing carries it across (jaw held: along).
 * `facetCount`: in how many ways the part could lie, wherever it is pressed; at 1 it can rock nowhere.
 */
export type Seat =
  | (WayToLie & { readonly status: 'seated'; readonly heightUnderLoadUm: number; readonly facetCount: number; readonly gapsUm: readonly number[]; readonly loadShares: readonly number[] | null })
  | { readonly status: 'tie'; readonly heightUnderLoadUm: number; readonly facetCount: number; readonly facetsAtLoad: readonly WayToLie[]
    readonly contactsCommon: readonly number[]; readonly rockAlongUm: number; readonly rockAcrossUm: number }
  | { readonly status: 'on-edge'; readonly heightUnderLoadUm: number; readonly facetCount: number; readonly facetsAtLoad: readonly WayToLie[] }
  | { readonly status: 'tips'; readonly facetCount: number }
  | { readonly status: 'collinear' }

/**
 * How a rigid part comes to lie on measured points: the plane above all of them that is lowest where it is pressed. Ties
 * are real, the part rocks; places within 1e-6 mm and heights within 1e-6 µm count as equal.
 *
 * @source SEAT-MODEL
 */
export function seatOf(question: SeatQuestion): Seat {
  const ways = waysOf(question)
  if (ways === null) return { status: 'collinear' }
  const { part, points } = question, facetCount = ways.all.length
  if (ways.loadDepthMm < -touchMm) return { status: 'tips', facetCount }
  const atLoad = ways.all.filter((way) => way.loadDepthMm >= -touchMm)
  const best = ways.all.reduce((deepest, way) => (way.loadDepthMm > deepest.loadDepthMm ? way : deepest))
  const facets = (atLoad.length === 0 ? [best] : atLoad).map(({ plane, contacts }) => ({ plane, contacts, ...tiltOf(plane, part) }))
  const heightUnderLoadUm = heightOf(best.plane, ...part.loadMm)
  if (ways.loadDepthMm <= touchMm) return { status: 'on-edge', heightUnderLoadUm, facetCount, facetsAtLoad: facets }
  const [only, ...more] = facets as [WayToLie, ...WayToLie[]]
  if (more.length === 0) return { status: 'seated', ...only, heightUnderLoadUm, facetCount, gapsUm: gapsOf(only.plane, points), loadShares: sharesOf(question, only.contacts) }
  return {
    status: 'tie', heightUnderLoadUm, facetCount, facetsAtLoad: facets,
    contactsCommon: only.contacts.filter((i) => more.every(({ contacts }) => contacts.includes(i))),
    rockAlongUm: rangeOf(facets.map(({ tiltAlongUm }) => tiltAlongUm)), rockAcrossUm: rangeOf(facets.map(({ tiltAcrossUm }) => tiltAcrossUm)),
  }
}

export const tiltOf = (plane: Plane, { lengthMm, widthMm }: SeatPart): Tilt => ({ tiltAlongUm: plane.bUmPerMm * lengthMm, tiltAcrossUm: plane.cUmPerMm * widthMm })

const rangeOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values)

/** Every way to lie, with how deep inside its contacts the load stands, and how deep inside all points. */
type Ways = { readonly loadDepthMm: number; readonly all: readonly { readonly plane: Plane; readonly contacts: readonly number[]; readonly loadDepthMm: number }[] }

/** Null where the points span too little. */
function waysOf({ part: { loadMm }, points, jawSlopeUmPerMm }: SeatQuestion): Ways | null {
  if (jawSlopeUmPerMm === null) {
    const outline = areaAround(points.map(({ xMm, yMm }) => [xMm, yMm] as const))
    if (outline === null) return null
    return { loadDepthMm: depthMm(outline, loadMm), all: facetsOf(points).map((facet) => ({ ...facet, loadDepthMm: depthMm(facet.outline, loadMm) })) }
  }
  const xs = points.map(({ xMm }) => xMm), fromMm = Math.min(...xs), toMm = Math.max(...xs), within = (left: number, right: number) => Math.min(loadMm[0] - left, right - loadMm[0])
  if (toMm - fromMm <= touchMm) return null
  return { loadDepthMm: within(fromMm, toMm), all: chainOf(points, jawSlopeUmPerMm).map((link) => ({ ...link, loadDepthMm: within(link.fromMm, link.toMm) })) }
}
