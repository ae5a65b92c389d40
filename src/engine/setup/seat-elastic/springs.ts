import { areaAround, depthMm, leftOfMm, sidesOf } from '#engine/setup/seat/outline.ts'
import type { Plane, SupportPoint } from '#engine/setup/seat/plane.ts'
import type { SeatPart } from '#engine/setup/seat/seat.ts'
import { leastSquaresStep } from '#engine/setup/seat-elastic/newton.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** A point that pushes back: N for each µm it is pressed down, and nothing when the part is above it. */
export type Spring = SupportPoint & { readonly nPerUm: number }
/** `jawSlopeUmPerMm`: null where nothing but the springs holds the part. */
export type ElasticQuestion = { readonly part: SeatPart; readonly springs: readonly Spring[]; readonly forceN: number; readonly jawSlopeUmPerMm: number | null }

export type Balance = { readonly plane: Plane; readonly forcesN: readonly number[] }

/** Whether springs can carry a load there at all, whatever the force: as for a rigid seat. */
export function reachOf({ springs, part: { loadMm }, jawSlopeUmPerMm }: ElasticQuestion): 'inside' | 'on-edge' | 'tips' | 'collinear' {
  if (jawSlopeUmPerMm === null) {
    const outline = areaAround(springs.map(({ xMm, yMm }) => [xMm, yMm] as const))
    return outline === null ? 'collinear' : reach(depthMm(outline, loadMm))
  }
  const xs = springs.map(({ xMm }) => xMm), from = Math.min(...xs), to = Math.max(...xs)
  return to - from <= touchMm ? 'collinear' : reach(Math.min(loadMm[0] - from, to - loadMm[0]))
}

/** What can carry at all: all springs, or of a load over the edge only those on the edge (at the corner) it is over. */
function carriersOf({ springs, part: { loadMm }, jawSlopeUmPerMm }: ElasticQuestion): readonly Spring[] {
  if (jawSlopeUmPerMm !== null) {
    const xs = springs.map(({ xMm }) => xMm), end = [Math.min(...xs), Math.max(...xs)].find((x) => Math.abs(x - loadMm[0]) <= touchMm)
    return end === undefined ? springs : springs.filter(({ xMm }) => Math.abs(xMm - end) <= touchMm)
  }
  const sides = sidesOf(areaAround(springs.map(({ xMm, yMm }) => [xMm, yMm] as const))!).filter(([from, to]) => leftOfMm(from, to, loadMm) <= touchMm)
  return springs.filter(({ xMm, yMm }) => sides.every(([from, to]) => leftOfMm(from, to, [xMm, yMm]) <= touchMm))
}

const reach = (depth: number): 'inside' | 'on-edge' | 'tips' => (depth < -touchMm ? 'tips' : depth <= touchMm ? 'on-edge' : 'inside')

/** Each step goes to the lowest point on its way; more are never needed than there are sets of springs near the last one. */
const mostSteps = 1000

/**
 * Where a rigid part comes to rest on springs that only push. Over an edge its plane is settled along the edge only.
 *
 * The energy ½ Σ k max(0, z − p)² + F p(load) is convex and, between places where a spring starts or stops to touch, a
 * parabola. Each step is Newton's on the springs that touch, or, where they leave a tilt free, down the slope in it; the
 * lowest point along a step is found exactly. It ends on the set of springs that carries, where Newton's step is exact.
 *
 * @param question  load inside what carries it or on its edge
 * @source SEAT-MODEL
 */
export function balanceOf(question: ElasticQuestion): Balance {
  const carriers = carriersOf(question), scaled = scaledFrom({ ...question, springs: carriers })
  let at: readonly number[] = scaled.start, settled = false
  for (let turn = 0; ; turn += 1) {
    if (turn === mostSteps) throw new Error('the springs do not come to rest')
    const step = stepFrom(scaled, at)
    if (step === null) break
    const length = lowestAlong(scaled, at, step), next = at.map((value, k) => value + length * step[k]!)
    const same = scaled.springs.every((spring) => touches(spring, next) === touches(spring, at))
    at = next
    // a whole step that changes no contact ends at the lowest point; the one after it takes out what rounding left
    if (settled) break
    settled = same && Math.abs(length - 1) < 1e-6
  }
  const forceOf = (spring: Spring): number => { const k = carriers.indexOf(spring); return k === -1 ? 0 : scaled.springs[k]!.nPerUm * Math.max(0, -gapAt(scaled.springs[k]!, at)) }
  return { plane: scaled.planeAt(at), forcesN: question.springs.map(forceOf) }
}

/** The unknowns: the height under the load, and the rise along and (free) across over half the extent. Their gradients at each spring. */
type Scaled = {
  readonly springs: readonly { readonly row: readonly number[]; readonly zUm: number; readonly nPerUm: number }[]
  readonly forceN: number
  readonly start: readonly number[]
  readonly planeAt: (at: readonly number[]) => Plane
}

function scaledFrom({ part: { loadMm: [x, y] }, springs, forceN, jawSlopeUmPerMm }: ElasticQuestion): Scaled {
  const reachX = Math.max(...springs.map(({ xMm }) => Math.abs(xMm - x))) || 1, reachY = Math.max(...springs.map(({ yMm }) => Math.abs(yMm - y))) || 1
  const slope = jawSlopeUmPerMm ?? 0, highestUm = Math.max(...springs.map(({ zUm }) => zUm))
  const rows = springs.map(({ xMm, yMm, zUm, nPerUm }) => ({
    row: [1, (xMm - x) / reachX, ...(jawSlopeUmPerMm === null ? [(yMm - y) / reachY] : [])], zUm: zUm - highestUm - slope * (yMm - y), nPerUm,
  }))
  // so low that every spring pushes and together they push back more than the force
  const lowest = Math.min(...rows.map(({ zUm }) => zUm)), total = rows.reduce((sum, { nPerUm }) => sum + nPerUm, 0)
  return {
    springs: rows, forceN, start: [lowest - forceN / total, ...rows[0]!.row.slice(1).map(() => 0)],
    planeAt: ([height, alongRise, acrossRise]) => {
      const bUmPerMm = alongRise! / reachX, cUmPerMm = jawSlopeUmPerMm ?? acrossRise! / reachY
      return { aUm: height! + highestUm - bUmPerMm * x - cUmPerMm * y, bUmPerMm, cUmPerMm }
    },
  }
}

const gapAt = ({ row, zUm }: Scaled['springs'][number], at: readonly number[]): number => row.reduce((sum, value, k) => sum + value * at[k]!, 0) - zUm

/** What rounding may take from a gap. */
const lostAt = ({ row, zUm }: Scaled['springs'][number], at: readonly number[]): number => rounding * row.reduce((size, value, k) => size + Math.abs(value * at[k]!), Math.abs(zUm))
/** Pressed by more than rounding may feign. */
const touches = (spring: Scaled['springs'][number], at: readonly number[]): boolean => gapAt(spring, at) < -lostAt(spring, at)

/** As parts of the force: what counts as unbalanced. */
const balanced = 1e-13
/** What each value that a gap is worked out from may be wrong by, as a part of it. */
const rounding = 4e-15

/** The next step; null where force and moments balance. */
function stepFrom({ springs, forceN }: Scaled, at: readonly number[]): readonly number[] | null {
  const touching = springs.filter((spring) => touches(spring, at))
  const gradient = at.map((_, k) => touching.reduce((sum, spring) => sum + spring.nPerUm * gapAt(spring, at) * spring.row[k]!, k === 0 ? forceN : 0))
  // a stiff spring at rest on its top may carry what rounding leaves, or not
  const lost = springs.reduce((sum, spring) => (gapAt(spring, at) > 4 * lostAt(spring, at) ? sum : sum + 2 * spring.nPerUm * lostAt(spring, at)), 0)
  if (Math.hypot(...gradient) <= balanced * forceN + lost) return null
  return leastSquaresStep(touching.map(({ row, nPerUm }) => ({ row, weight: nPerUm })), gradient, 1e-9 * forceN + 10 * lost)
}

/** How far along a step the energy is lowest: its slope rises, straight between the places where a spring starts or stops to touch. */
function lowestAlong({ springs, forceN }: Scaled, at: readonly number[], step: readonly number[]): number {
  const moving = springs.map((spring) => ({ gap: gapAt(spring, at), rise: spring.row.reduce((sum, value, k) => sum + value * step[k]!, 0), nPerUm: spring.nPerUm }))
  const slopeAt = (t: number): number => moving.reduce((sum, { gap, rise, nPerUm }) => sum + nPerUm * Math.min(0, gap + t * rise) * rise, forceN * step[0]!)
  const turns = moving.flatMap(({ gap, rise }) => (rise !== 0 && -gap / rise > 0 ? [-gap / rise] : [])).sort((a, b) => a - b)
  const past = turns.findIndex((t) => slopeAt(t) >= 0), from = past === -1 ? (turns.at(-1) ?? 0) : past === 0 ? 0 : turns[past - 1]!
  const to = past === -1 ? from + 1 : turns[past]!, low = slopeAt(from), high = slopeAt(to)
  if (high === low) return from
  return from - (low * (to - from)) / (high - low)
}
