import type { Finding } from '#model/finding.ts'
import type { Sum } from '#model/sum.ts'
import { longestMm, type RawObject } from '#engine/read/raw-object.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import { longestUm, mostPoints, readSeatPart, refuseNotPositive, refusePart, refuseSeat } from '#engine/setup/seat/read-part.ts'
import { readSupport, refuseSupport } from '#engine/setup/seat/read-support.ts'
import { heldBy, slopeFrom, type Support } from '#engine/setup/seat/support.ts'
import { type Closing, closingOf, gapToClose } from '#engine/setup/seat-elastic/closing.ts'
import { steelMPa } from '#engine/setup/hold/strength.ts'
import { type Elastic, elasticOf } from '#engine/setup/seat-elastic/elastic.ts'
import type { ElasticQuestion } from '#engine/setup/seat-elastic/springs.ts'
import { springsOn, type Stiffness } from '#engine/setup/seat-elastic/stations.ts'

type Told = Elastic & { readonly closing: Closing | null; readonly findings: readonly Finding[]; readonly sum: readonly Sum[] }
/** `ifHeld`: the answer if the fixed jaw squares the part, beside that of a free one, where nobody knows which. */
export type ElasticAnswer = Told & Ignored & { readonly ifHeld?: Told }

const mostForceN = 1e9, mostMPa = 1e7, mostNPerUm = 1e12

type Case = { readonly bare: ElasticQuestion; readonly on: null } | { readonly bare: null; readonly on: Support; readonly forceN: number; readonly stiffness: Stiffness }

/**
 * The calculation `seat-elastic`: bare `points` with their stiffness, or `bars` as they stand, pressed down with a force.
 *
 * @throws Refusal with a malformed code, then `size-not-positive` and as `seat`
 */
export function answerElastic(raw: unknown): ElasticAnswer {
  const { value, ignored } = readCase(raw, readElastic)
  if (value.on === null) {
    const { part, springs, forceN } = value.bare
    refusePart(part)
    refuseNotPositive(forceN, 'forceN')
    springs.forEach(({ nPerUm }, i) => refuseNotPositive(nPerUm, `points[${i}][3]`))
    refuseSeat(springs.length, null)
    return { ...told(value.bare), ignored }
  }
  const { on, forceN, stiffness } = value
  refuseSupport(on)
  refuseNotPositive(forceN, 'forceN')
  refuseNotPositive(stiffness.barMPa, 'barMPa')
  refuseNotPositive(stiffness.partMPa, 'partMPa')
  if (stiffness.partHeightMm !== null) refuseNotPositive(stiffness.partHeightMm, 'partHeightMm')
  const springs = springsOn(on, stiffness), mode = heldBy(on.side), answer = (jawSlopeUmPerMm: number | null) => told({ part: on.part, springs, forceN, jawSlopeUmPerMm })
  return { ...answer(mode === 'jaw' ? slopeFrom(on).value : null), ...(mode === 'both' ? { ifHeld: answer(slopeFrom(on).value) } : {}), ignored }
}

function readElastic(raw: RawObject): Case {
  const forceN = raw.number('forceN', mostForceN)
  if (!raw.has('points') && raw.has('bars')) {
    const stiffness = { barMPa: raw.numberOr('barMPa', steelMPa, mostMPa), partMPa: raw.numberOr('partMPa', steelMPa, mostMPa), partHeightMm: raw.numberOr('partHeightMm', null) }
    return { bare: null, on: readSupport(raw), forceN, stiffness }
  }
  const mode = raw.word('mode', ['free', 'jaw'] as const), points = raw.rows('points', [longestMm, longestMm, longestUm, mostNPerUm], mostPoints)
  return {
    bare: {
      part: raw.object('part', readSeatPart)!, springs: points.map(([xMm, yMm, zUm, nPerUm]) => ({ xMm: xMm!, yMm: yMm!, zUm: zUm!, nPerUm: nPerUm! })), forceN,
      jawSlopeUmPerMm: mode === 'jaw' ? raw.number('jawSlopeUmPerMm', longestUm) : null,
    },
    on: null,
  }
}

function told(question: ElasticQuestion): Told {
  const elastic = elasticOf(question), gapUm = gapToClose(question), closing = gapUm > 0 ? closingOf(question, gapUm) : null
  return { ...elastic, closing, findings: findingsOf(elastic, closing, question), sum: sumOf(elastic, closing, question) }
}

/** Wherever a force is named that closes a gap, what it is worth is said with it. */
function findingsOf(elastic: Elastic, closing: Closing | null, { part }: ElasticQuestion): readonly Finding[] {
  const own = elastic.status === 'tips' ? [{ code: 'seat-tips', facts: { xMm: part.loadMm[0], yMm: part.loadMm[1] } }]
    : elastic.status === 'collinear' ? [{ code: 'seat-collinear', facts: {} }]
      : elastic.status === 'on-edge' ? [{ code: 'on-edge', facts: {} }]
        : elastic.status === 'rocks' ? [{ code: 'rocks-under-force', facts: { alongUm: elastic.tiltAlongUmRange[1] - elastic.tiltAlongUmRange[0], acrossUm: elastic.tiltAcrossUmRange[1] - elastic.tiltAcrossUmRange[0] } }] : []
  if (closing === null) return own
  return [...own, closing.forceN === null ? { code: 'no-force-closes', facts: { gapUm: closing.gapUm } } : { code: 'gap-closed-by-force', facts: { gapUm: closing.gapUm, forceN: closing.forceN } }]
}

function sumOf(elastic: Elastic, closing: Closing | null, { forceN, part }: ElasticQuestion): readonly Sum[] {
  const sources = ['SEAT-MODEL', 'STRENGTH']
  return [
    ...('heightUnderLoadUm' in elastic ? [{ formula: 'sinks-under-force', result: { name: 'heightUnderLoadUm', value: elastic.heightUnderLoadUm }, inputs: { forceN, xMm: part.loadMm[0], yMm: part.loadMm[1] }, sources }] : []),
    ...(closing === null ? [] : [{ formula: 'closing-force', result: { name: 'forceN', value: closing.forceN }, inputs: { gapUm: closing.gapUm }, sources }]),
  ]
}
