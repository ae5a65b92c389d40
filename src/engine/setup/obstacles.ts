import type { Cut, EndCut } from '#model/cut.ts'
import type { Part, Rect } from '#model/part.ts'
import type { Wishes } from '#model/wishes.ts'
import { forbiddenFor, type Forbidden } from '#engine/setup/forbidden.ts'
import { isThroughCut } from '#engine/setup/reach.ts'

/** A cut that comes out below over a rectangle, without saying how deep it is. */
export type ThroughRect = { readonly kind: 'through'; readonly rect: Rect }

/** What may be in the way of a bar, as an entry of a list: cuts of a setup, or the `holes` of `places`. */
export type InTheWay = Cut | ThroughRect

/** The part as `places` sees it; the height is needed only to tell which milled cuts come out below. */
export type PartInPlan = Omit<Part, 'heightMm'> & { readonly heightMm: number | null }

export type PlaceWishes = Pick<Wishes, 'holeAirMm' | 'gapMm' | 'airMm' | 'carryMm'>

/**
 * What bars have to keep clear of, prepared once for one part.
 *
 * Entry k of the five columns is a rectangle (for a hole its centre) and the distance a bar has to keep from it. `index`
 * says where it stands in the list given. `y0Back`, `y1Back` are the same rectangles seen from the moving jaw.
 */
export type Obstacles = {
  readonly part: PartInPlan
  readonly wishes: PlaceWishes
  readonly index: Int32Array
  readonly x0: Float64Array
  readonly x1: Float64Array
  readonly y0: Float64Array
  readonly y1: Float64Array
  readonly y0Back: Float64Array
  readonly y1Back: Float64Array
  readonly keepOut: Float64Array
  /** Bars end between these, in mm along: the faces of end cuts less the air; ±Infinity without one. */
  readonly leftMm: number
  readonly rightMm: number
  /** Room to work in, used anew for each bar and y. */
  readonly forbidden: Forbidden
}

/**
 * Prepares the through holes and through cuts of a list; everything else in it keeps nobody out.
 *
 * A hole without x, and everything while `alongJawsMm` is unknown, counts as standing anywhere along. A through cut
 * without a rectangle keeps nobody out; the setup names it in a finding.
 *
 * @source SETUP-RULES
 */
export function obstaclesOf(part: PartInPlan, list: readonly InTheWay[], wishes: PlaceWishes): Obstacles {
  const found = list.flatMap((entry, index) => {
    const keepOut = keepOutOf(part, entry, wishes.holeAirMm)
    return keepOut ? [{ ...keepOut, index }] : []
  })
  const column = (value: (entry: (typeof found)[number]) => number) => Float64Array.from(found, value)
  const acrossMm = part.betweenJawsMm ?? 0, alongMm = part.alongJawsMm
  const ends = alongMm === null ? [] : list.filter((entry): entry is EndCut => entry.kind === 'end')
  const faces = (side: EndCut['side']) => ends.filter((end) => end.side === side).map((end) => end.stockMm + wishes.airMm)
  return {
    part, wishes,
    index: Int32Array.from(found, (entry) => entry.index),
    x0: column((entry) => entry.x0Mm), x1: column((entry) => entry.x1Mm),
    y0: column((entry) => entry.y0Mm), y1: column((entry) => entry.y1Mm),
    y0Back: column((entry) => acrossMm - entry.y1Mm), y1Back: column((entry) => acrossMm - entry.y0Mm),
    keepOut: column((entry) => entry.keepOutMm),
    leftMm: Math.max(-Infinity, ...faces('left')),
    rightMm: (alongMm ?? 0) - Math.max(-Infinity, ...faces('right')),
    forbidden: forbiddenFor(found.length),
  }
}

/** The rectangle to keep off, and by how much: for a hole its centre, by its radius and the air. */
function keepOutOf(part: PartInPlan, entry: InTheWay, airMm: number): (Rect & { keepOutMm: number }) | null {
  if (entry.kind === 'end') return null
  const anywhere = { x0Mm: -Infinity, x1Mm: Infinity }
  if (entry.kind === 'hole') {
    if (!entry.through) return null
    const alongMm = entry.xMm === null || part.alongJawsMm === null ? anywhere : { x0Mm: entry.xMm, x1Mm: entry.xMm }
    return { ...alongMm, y0Mm: entry.yMm, y1Mm: entry.yMm, keepOutMm: entry.diameterMm / 2 + airMm }
  }
  const through = entry.kind === 'through' || (part.heightMm !== null && isThroughCut(entry, part.heightMm))
  if (!through || !entry.rect) return null
  return { ...entry.rect, ...(part.alongJawsMm === null ? anywhere : {}), keepOutMm: airMm }
}
