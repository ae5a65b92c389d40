import { longestUm, mostPoints, readSeatPart, refuseNegative, refuseNotPositive, refusePart } from '#engine/setup/seat/read-part.ts'
import type { BarUnder, Figure, Support } from '#engine/setup/seat/support.ts'
import { sides } from '#model/part.ts'
import { Refusal } from '#model/refusal.ts'
import { longestMm, type RawObject } from '#engine/read/raw-object.ts'

const level: Figure = { value: 0, u: 0 }

/** A part on bars as they stand, in place of bare points. What is not given of bed and jaws is taken as true, without uncertainty. */
export function readSupport(raw: RawObject): Support {
  return {
    part: raw.object('part', readSeatPart)!,
    bars: raw.list('bars', readBarUnder, mostPoints),
    side: raw.wordOr('side', sides, 'unknown'),
    ...(raw.objectOr('vise', readVise, null) ?? { bedUm: [], bedUUm: 0, jawSlopeUmPerMm: level, liftUm: level }),
    squarenessUmPerMm: raw.objectOr('squareness', (square) => readFigure(square, 'umPerMm', 'uUmPerMm'), level),
  }
}

const readVise = (raw: RawObject): Pick<Support, 'bedUm' | 'bedUUm' | 'jawSlopeUmPerMm' | 'liftUm'> => ({
  bedUm: raw.rowsOrEmpty('bedUm', [longestMm, longestMm, longestUm], mostPoints).map(([x, y, um]) => [x!, y!, um!] as const),
  bedUUm: raw.numberOr('bedUUm', 0, longestUm),
  jawSlopeUmPerMm: raw.objectOr('jawSlope', (slope) => readFigure(slope, 'umPerMm', 'uUmPerMm'), level),
  liftUm: raw.objectOr('jawLift', (lift) => readFigure(lift, 'um', 'uUm'), level),
})

const readFigure = (raw: RawObject, value: string, u: string): Figure => ({ value: raw.number(value, longestUm), u: raw.numberOr(u, 0, longestUm) })

function readBarUnder(raw: RawObject): BarUnder {
  return {
    id: raw.text('id'), xMm: raw.number('xMm'), yMm: raw.number('yMm'), heightMm: raw.number('heightMm'), thicknessMm: raw.number('thicknessMm'), lengthMm: raw.number('lengthMm'),
    turned: raw.yesNoOr('turned', false), heightsUm: raw.rowsOrEmpty('heightsUm', [longestMm, longestUm], mostPoints).map(([xMm, um]) => [xMm!, um!] as const),
    uUm: raw.numberOr('uUm', 0, longestUm), stationUUm: raw.numberOr('stationUUm', 0, longestUm),
  }
}

/** @throws Refusal `size-not-positive`, `uncertainty-negative`, `too-few-bars`, `bar-off-part` */
export function refuseSupport({ part, bars, bedUUm, jawSlopeUmPerMm, squarenessUmPerMm, liftUm }: Support): void {
  refusePart(part)
  bars.forEach((bar, b) => { for (const key of ['heightMm', 'thicknessMm', 'lengthMm'] as const) refuseNotPositive(bar[key], `bars[${b}].${key}`) })
  bars.forEach((bar, b) => { for (const key of ['uUm', 'stationUUm'] as const) refuseNegative(bar[key], `bars[${b}].${key}`) })
  refuseNegative(bedUUm, 'vise.bedUUm')
  refuseNegative(jawSlopeUmPerMm.u, 'vise.jawSlope.uUmPerMm')
  refuseNegative(liftUm.u, 'vise.jawLift.uUm')
  refuseNegative(squarenessUmPerMm.u, 'squareness.uUmPerMm')
  if (bars.length === 0) throw new Refusal('too-few-bars', { field: 'bars', given: 0, needed: 1 })
  bars.forEach(({ xMm, lengthMm }, b) => {
    if (xMm >= part.lengthMm || xMm + lengthMm <= 0) throw new Refusal('bar-off-part', { field: `bars[${b}].xMm`, given: xMm, needed: { belowMm: part.lengthMm } })
  })
}
