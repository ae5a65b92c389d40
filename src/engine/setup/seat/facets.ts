import { areaAround, leftOfMm, longestOf, sidesOf } from '#engine/setup/seat/outline.ts'
import { gapsOf, type Plane, planeThrough, type SupportPoint } from '#engine/setup/seat/plane.ts'
import type { Point } from '#engine/setup/table/hull.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** One way the part can lie: its plane, every point that touches (rising), and the outline of those in the plan. */
export type Facet = { readonly plane: Plane; readonly contacts: readonly number[]; readonly outline: readonly Point[] }

/** A plane touching from above that carries on less than three points is turned down about them until one more touches. */
type Lying = { readonly plane: Plane; readonly contacts: readonly number[] }

/**
 * All facets of the upper hull: every way a rigid part can lie on the points, none above it and three or more not in line
 * touching. The first is found by turning a plane down from the highest point, the rest by turning over each side.
 *
 * @param points  not all in one line in the plan
 * @source SEAT-MODEL
 */
export function facetsOf(points: readonly SupportPoint[]): readonly Facet[] {
  const first = firstFacet(points), facets = [first], known = new Set([keyOf(first)])
  for (let k = 0; k < facets.length; k += 1) {
    for (const [from, to] of sidesOf(facets[k]!.outline)) {
      const next = turnedDown(points, facets[k]!.plane, to, from)
      const facet = next === null ? null : settled(points, next)
      if (facet === null || known.has(keyOf(facet))) continue
      known.add(keyOf(facet))
      facets.push(facet)
    }
    // an upper hull of n points has fewer than 2n facets
    if (facets.length > 4 * points.length) throw new Error('the facets do not close')
  }
  return facets
}

const keyOf = ({ contacts }: Facet): string => contacts.join(' ')
const spotOf = ({ xMm, yMm }: SupportPoint): Point => [xMm, yMm]

function firstFacet(points: readonly SupportPoint[]): Facet {
  const highest = points.reduce((best, one) => (one.zUm > best.zUm ? one : best)), [x, y] = spotOf(highest)
  let lying = touching(points, { aUm: highest.zUm, bUmPerMm: 0, cUmPerMm: 0 })
  for (let turns = 0; turns < 3; turns += 1) {
    const spots = lying.contacts.map((i) => spotOf(points[i]!)), facet = settled(points, lying.plane)
    if (facet !== null) return facet
    const [from, to] = longestOf(spots), single = Math.hypot(to[0] - from[0], to[1] - from[1]) <= touchMm
    const [a, b]: readonly [Point, Point] = single ? [[x, y], [x + 1, y]] : [from, to]
    lying = touching(points, turnedDown(points, lying.plane, a, b) ?? turnedDown(points, lying.plane, b, a)!)
  }
  throw new Error('no plane lies on the points')
}

/** The plane turned about the line from a to b, down to its left, until a point there touches; null where there is none. */
function turnedDown(points: readonly SupportPoint[], plane: Plane, a: Point, b: Point): Plane | null {
  const gaps = gapsOf(plane, points)
  let least = Infinity
  points.forEach((point, i) => {
    const away = leftOfMm(a, b, spotOf(point))
    if (away > touchMm) least = Math.min(least, gaps[i]! / away)
  })
  if (least === Infinity) return null
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]], length = Math.hypot(dx, dy), alongX = (least * dy) / length, alongY = (least * dx) / length
  return { aUm: plane.aUm - alongX * a[0] + alongY * a[1], bUmPerMm: plane.bUmPerMm + alongX, cUmPerMm: plane.cUmPerMm - alongY }
}

function touching(points: readonly SupportPoint[], plane: Plane): Lying {
  return { plane, contacts: gapsOf(plane, points).flatMap((gapUm, i) => (gapUm <= 0 ? [i] : [])) }
}

/** The facet that a plane lies on, laid anew through three contacts far apart so that turning adds up no error; null where its contacts are in line. */
function settled(points: readonly SupportPoint[], rough: Plane): Facet | null {
  const { contacts } = touching(points, rough), outline = areaAround(contacts.map((i) => spotOf(points[i]!)))
  if (outline === null) return null
  const [from, to] = longestOf(outline)
  const third = outline.reduce((best, one) => (Math.abs(leftOfMm(from, to, one)) > Math.abs(leftOfMm(from, to, best)) ? one : best))
  const at = ([x, y]: Point): SupportPoint => points[contacts.find((i) => points[i]!.xMm === x && points[i]!.yMm === y)!]!
  const lying = touching(points, planeThrough(at(from), at(to), at(third)))
  return { ...lying, outline: areaAround(lying.contacts.map((i) => spotOf(points[i]!)))! }
}
