import { cutKinds, tools, type Cut, type EndCut, type Hole, type MilledCut } from '#model/cut.ts'
import type { Rect } from '#model/part.ts'
import type { InTheWay } from '#engine/setup/obstacles.ts'
import type { RawObject } from '#engine/read/raw-object.ts'

/** The most cuts a case may hold. */
export const mostCuts = 1000

/** mm below the part that a milled cut goes which is meant to come out; common practice, no source. */
export const milledRunThroughMm = 0.5
/** mm below the part, beyond its tip, that a through hole goes; common practice, no source. */
export const holeRunThroughMm = 1.5
/** A drill's point where nothing is said, in degrees; common practice, no source. */
export const commonPointDeg = 118
/** Threads of lead of a plug or second tap; @source TAP-LEADS */
export const commonLeadThreads = 4

/** One cut of a setup. Of a cut of unknown kind nothing else is looked at: null. */
export function readCut(raw: RawObject): Cut | null {
  const kind = raw.word('kind', cutKinds)
  if (kind === null) return null
  if (kind === 'hole') return readHole(raw)
  if (kind === 'end') return readEnd(raw)
  return readMilled(raw, kind)
}

/** One entry of the `holes` of `places`: a through cut `{rect}`, an end `{side, stockMm}`, or a hole. */
export function readInTheWay(raw: RawObject): InTheWay | null {
  if (raw.has('rect')) {
    const rect = raw.object('rect', readRect)
    return rect && { kind: 'through', rect }
  }
  return raw.has('side') || raw.has('stockMm') ? readEnd(raw) : readHole(raw)
}

export const readRect = (raw: RawObject): Rect =>
  ({ x0Mm: raw.number('x0Mm'), x1Mm: raw.number('x1Mm'), y0Mm: raw.number('y0Mm'), y1Mm: raw.number('y1Mm') })

/** A hole does not say that it is blind in so many words: a spot and a countersink are, unless it says otherwise. */
function readHole(raw: RawObject): Hole {
  const tool = raw.wordOr('tool', tools, 'drill')
  const through = raw.yesNoOr('through', tool !== 'spot' && tool !== 'countersink')
  const depthMm = through ? raw.numberOr('depthMm', undefined) : raw.number('depthMm')
  const pitchMm = tool === 'tap' ? raw.number('pitchMm') : raw.numberOr('pitchMm', undefined)
  return {
    kind: 'hole', tool, through,
    xMm: raw.number('xMm'), yMm: raw.number('yMm'), diameterMm: raw.number('diameterMm'),
    runThroughMm: raw.numberOr('runThroughMm', holeRunThroughMm),
    pointAngleDeg: raw.numberOr('pointAngleDeg', commonPointDeg, Infinity),
    leadThreads: raw.numberOr('leadThreads', commonLeadThreads),
    ...(depthMm === undefined ? {} : { depthMm }),
    ...(pitchMm === undefined ? {} : { pitchMm }),
  }
}

const readEnd = (raw: RawObject): EndCut => ({ kind: 'end', side: raw.word('side', ['left', 'right']) ?? 'left', stockMm: raw.number('stockMm') })

function readMilled(raw: RawObject, kind: MilledCut['kind']): MilledCut {
  const rect = raw.objectOr('rect', readRect, null)
  return {
    kind,
    depthMm: raw.number('depthMm'),
    overJaw: raw.yesNoOr('overJaw', true),
    runThroughMm: raw.numberOr('runThroughMm', milledRunThroughMm),
    ...(rect ? { rect } : {}),
  }
}
