import type { Finding } from '#model/finding.ts'
import { atSeatOf } from '#engine/setup/at-seat.ts'
import type { BlockQuestion, Rest } from '#engine/setup/block/block-question.ts'
import type { Holding, How } from '#engine/setup/block/holdings.ts'
import { oppositeOf, type Face } from '#engine/setup/block/orders.ts'
import { touchMm } from '#engine/setup/tolerance.ts'

/** One face of the block: how it lies, and on what. Sizes as it sits, before the cut. */
export type BlockStep = {
  readonly cut: Face
  readonly how: How
  readonly up: Face
  readonly down: Face
  readonly fixed: Face
  readonly moving: Face
  readonly depthMm: number
  readonly betweenJawsMm: number
  readonly heightMm: number
  /** Between the moving jaw and a raw side, so that the cut face beds at the fixed jaw. */
  readonly rod: boolean
  /** Heights that work. */
  readonly lowMm: number
  readonly highMm: number
  /** Pair, bed, or a pair of the height `seatMm` where nobody said which there are; null where nothing given serves. */
  readonly rest: 'pair' | 'bed' | 'any pair' | null
  readonly pair: string | null
  readonly seatMm: number | null
  readonly gripMm: number | null
  readonly stickOutMm: number | null
  readonly findings: readonly Finding[]
}

export function stepOf(question: BlockQuestion, holding: Holding, rest: Rest | null): BlockStep {
  const { turn: { cut, fixed }, how, up, depthMm, cutBefore, window } = holding, part = holding.question.part
  const moving = oppositeOf(fixed), seatMm = rest?.heightMm ?? null, atSeat = seatMm === null ? null : atSeatOf(holding.question, window, seatMm)
  const rod = cutBefore.has(fixed) && !cutBefore.has(moving)
  return {
    cut, how, up, down: oppositeOf(up), fixed, moving, depthMm, betweenJawsMm: part.betweenJawsMm!, heightMm: part.heightMm, rod,
    lowMm: window.lowMm, highMm: window.highMm,
    rest: rest && (rest.id !== null ? 'pair' : rest.heightMm <= touchMm ? 'bed' : 'any pair'), pair: rest?.id ?? null,
    seatMm, gripMm: atSeat?.gripMm ?? null, stickOutMm: atSeat?.stickOutMm ?? null,
    findings: findingsOf(question, holding, rod, seatMm, atSeat),
  }
}

/** mm. Less grip than this is a thin nip. Common practice, no source. */
const thinNipMm = 3

function findingsOf(
  { vise, rodMm, wishes }: BlockQuestion, { how, up, depthMm, cutBefore, window, question: { part } }: Holding, rod: boolean, seatMm: number | null, atSeat: ReturnType<typeof atSeatOf> | null,
): readonly Finding[] {
  const one = (applies: boolean, code: string, facts: Finding['facts'] = {}): readonly Finding[] => (applies ? [{ code, facts }] : [])
  const isAbove = (mostMm: number | null) => seatMm !== null && mostMm !== null && seatMm > mostMm + touchMm
  const neededMm = part.betweenJawsMm! + rodMm, stickOutMm = atSeat?.stickOutMm ?? null, gripMm = atSeat?.gripMm ?? null
  return [
    ...one(seatMm === null, 'no-pair-serves', { lowMm: window.lowMm, highMm: window.highMm }),
    ...one(rod, 'rod-at-moving-jaw', { rodMm }),
    ...one(rod && neededMm > vise.openingMm + touchMm, 'rod-does-not-go-in', { neededMm, openingMm: vise.openingMm }),
    ...one(!cutBefore.has(oppositeOf(up)) && how === 'lying', 'raw-side-down'),
    ...one(how === 'standing' && !cutBefore.has(oppositeOf(up)), 'set-upright-by-square'),
    ...one(how === 'past the jaw', 'end-past-the-jaw', { clearMm: depthMm + wishes.airMm }),
    ...one(isAbove(window.stickOut.maxSeatMmByGrip), 'stick-out-per-grip', { stickOutMm, gripMm, limit: wishes.stickOutPerGrip }),
    ...one(isAbove(window.stickOut.maxSeatMmByThickness), 'stick-out-per-thickness', { stickOutMm, limit: wishes.stickOutPerThickness }),
    ...one(gripMm !== null && gripMm < thinNipMm - touchMm, 'thin-nip', { gripMm }),
  ]
}
