import type { Bar } from '#model/bar.ts'
import type { Finding } from '#model/finding.ts'
import type { AtSeat } from '#model/setup.ts'
import { leastAirMm } from '#engine/setup/clearance.ts'
import type { Found } from '#engine/setup/found.ts'
import { movesOf, spacerAcross } from '#engine/setup/moves.ts'
import type { Search } from '#engine/setup/search.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** mm. A bar set by hand nearer than this to a hole is told of. Common practice, no source. */
const byHandMm = 2

/** mm. Less grip than this is a thin nip. Common practice, no source. */
const thinNipMm = 3

/** What to know about one choice before it is used. @source SETUP-RULES */
export function findingsOf(search: Search, found: Found, { gripMm, stickOutMm }: AtSeat): readonly Finding[] {
  const { question: { wishes }, window: { stickOut } } = search
  const isAbove = (mostMm: number | null) => mostMm !== null && found.seatMm > mostMm + touchMm
  return [
    ...holesOutside(search, found),
    ...barsFarOut(search, found),
    ...one(isAbove(stickOut.maxSeatMmByGrip), 'stick-out-per-grip', { stickOutMm, gripMm, limit: wishes.stickOutPerGrip }),
    ...one(isAbove(stickOut.maxSeatMmByThickness), 'stick-out-per-thickness', { stickOutMm, limit: wishes.stickOutPerThickness }),
    ...barsThat(found, 'look-first', (bar) => bar.trust === 'look first'),
    ...barsThat(found, 'demagnetise-first', (bar) => bar.magnetised === true),
    ...one(stickOutMm < -touchMm, 'below-jaws', { belowMm: -stickOutMm }),
    ...placedByHand(search, found),
    ...one(gripMm < thinNipMm - touchMm, 'thin-nip', { gripMm }),
    ...barsThat(found, 'out', (bar) => bar.where === 'out'),
    ...one(Number.isNaN(found.differUm), 'match-not-measured', { bars: found.bars.map((bar) => bar.id) }),
  ]
}

const one = (applies: boolean, code: string, facts: Finding['facts']): readonly Finding[] => (applies ? [{ code, facts }] : [])

function barsThat({ bars }: Found, code: string, isSo: (bar: Bar) => boolean): readonly Finding[] {
  const ids = bars.filter(isSo).map((bar) => bar.id)
  return one(ids.length > 0, code, { bars: ids })
}

function holesOutside({ question: { cuts } }: Search, { places: { base } }: Found): readonly Finding[] {
  if (base === null) return []
  const isOutside = (mm: number | null, fromMm: number, toMm: number) => mm !== null && (mm < fromMm - touchMm || mm > toMm + touchMm)
  const holes = cuts.flatMap((cut, k) => (cut.kind === 'hole' && (isOutside(cut.xMm, base.x0Mm, base.x1Mm) || isOutside(cut.yMm, base.y0Mm, base.y1Mm)) ? [k] : []))
  return one(holes.length > 0, 'hole-outside-base', { holes })
}

function barsFarOut({ question: { part: { alongJawsMm } } }: Search, { bars, inPlan, places: { places } }: Found): readonly Finding[] {
  if (alongJawsMm === null) return []
  const far = places.flatMap(({ xMm }, k) => (Math.abs(xMm + inPlan[k]!.lengthMm / 2 - alongJawsMm / 2) > alongJawsMm / 4 + touchMm ? [bars[k]!.id] : []))
  return one(far.length > 0, 'bar-far-from-middle', { bars: far })
}

/** Bars that no jaw holds in place, near a hole or through cut; with what sets them. */
function placedByHand({ obstacles }: Search, { bars, inPlan, places }: Found): readonly Finding[] {
  const partMm = obstacles.part.betweenJawsMm
  if (partMm === null || places.status === 'fouled') return []
  const moves = movesOf(obstacles, inPlan, places)
  return places.places.flatMap((place, k) => {
    const move = moves.find(({ bar }) => bar === k), alone = inPlan.length === 1
    const spacer = move?.across ?? (alone ? spacerAcross(partMm, inPlan[k]!, place, null) : move?.along)
    const airMm = leastAirMm(obstacles, inPlan[k]!, place)
    return spacer && airMm < byHandMm - touchMm ? [{ code: 'placed-by-hand', facts: { bar: bars[k]!.id, airMm, ...spacer } }] : []
  })
}
