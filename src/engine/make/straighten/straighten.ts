import type { Finding } from '#model/finding.ts'
import { depthAt, hinge, loadAt, setAt, yieldedWhere } from '#engine/make/straighten/bending-curve.ts'

/** A bar on two supports, pressed in the middle; `depthMm` is its size in the direction of the press. */
export type StraightenQuestion = {
  readonly spanMm: number
  readonly widthMm: number
  readonly depthMm: number
  readonly eMPa: number
  readonly yieldMPa: number
  /** What has to stay once the press lets go: the bow that was measured over the span. */
  readonly wantedSetUm: number
}

/** What comes of it where the yield stress is other than was taken. */
export type YieldOff = {
  readonly yieldPercent: number
  /** What stays after the press depth that was told. */
  readonly setUm: number
  /** The press depth that would have been right. */
  readonly pressDepthUm: number
}

export type Straighten = {
  /** Load and press depth at which the skin first yields. */
  readonly pyN: number
  readonly deltaYUm: number
  readonly largestSetBeforeHingeUm: number
  /** `hinge`: the wanted set is beyond what small deflection can tell; the force stays, the bar folds. */
  readonly status: 'reachable' | 'hinge'
  /** Load as a multiple of `pyN`. */
  readonly p: number
  readonly forceN: number
  readonly pressDepthUm: number
  readonly springbackUm: number
  /** Null at the hinge, the last also where the core has just gone. */
  readonly plasticLengthMm: number | null
  readonly elasticCoreHalfDepthMm: number | null
  readonly strainRatioOuterFibre: number | null
  readonly sensitivity: readonly YieldOff[]
  readonly findings: readonly Finding[]
}

/** In percent; how well a yield stress is known. Common practice, no source. */
const yieldOffPercent = [-10, -5, 5, 10] as const

/** A span shorter than so many depths shears as well as bends. Common practice, no source. */
const leastSlenderness = 5

/**
 * How deep to press a bar, and how hard, so that a wanted set stays; and how much hangs on the yield stress.
 *
 * @source BENDING
 */
export function straightenOf(question: StraightenQuestion): Straighten {
  const { spanMm, widthMm, depthMm, yieldMPa, wantedSetUm } = question
  const pyN = (2 * yieldMPa * widthMm * depthMm ** 2) / (3 * spanMm), deltaYUm = firstYieldUm(question), bent = bendFor(deltaYUm, wantedSetUm)
  const { yielded, load, springbackUm } = bent, reachable = yielded !== null, core = reachable ? 1 - yielded : 0
  const sensitivity = yieldOffPercent.map((yieldPercent) => {
    const otherUm = deltaYUm * (1 + yieldPercent / 100)
    return { yieldPercent, setUm: setAfter(otherUm, bent.pressDepthUm), pressDepthUm: bendFor(otherUm, wantedSetUm).pressDepthUm }
  })
  return {
    pyN, deltaYUm, largestSetBeforeHingeUm: hinge.set * deltaYUm, status: reachable ? 'reachable' : 'hinge',
    p: load, forceN: load * pyN, pressDepthUm: bent.pressDepthUm, springbackUm,
    plasticLengthMm: reachable ? (spanMm * (load - 1)) / load : null,
    elasticCoreHalfDepthMm: reachable ? (depthMm / 2) * core : null,
    strainRatioOuterFibre: core > 0 ? 1 / core : null,
    sensitivity,
    findings: [
      ...(reachable ? [] : [{ code: 'set-beyond-hinge', facts: { wantedSetUm, largestSetUm: hinge.set * deltaYUm } }]),
      ...(spanMm < leastSlenderness * depthMm ? [{ code: 'span-short', facts: { spanMm, depthMm, least: leastSlenderness } }] : []),
      { code: 'set-hangs-on-yield', facts: { wantedSetUm, offPercent: yieldOffPercent[3], lowUm: sensitivity[3]!.setUm, highUm: sensitivity[0]!.setUm } },
      { code: 'pressed-bar-may-break', facts: {} },
    ],
  }
}

/** Press depth at first yield, in µm. */
const firstYieldUm = ({ spanMm, depthMm, eMPa, yieldMPa }: StraightenQuestion): number => (1000 * yieldMPa * spanMm ** 2) / (6 * eMPa * depthMm)

type Bend = { readonly yielded: number | null; readonly load: number; readonly springbackUm: number; readonly pressDepthUm: number }

/** Up to the hinge by the curve; beyond it the bar folds, and all further depth stays. */
function bendFor(deltaYUm: number, setUm: number): Bend {
  const wanted = setUm / deltaYUm, isFolding = wanted > hinge.set * (1 + rounding)
  const yielded = isFolding ? null : yieldedWhere(setAt, wanted), load = yielded === null ? hinge.load : loadAt(yielded), springbackUm = load * deltaYUm
  return { yielded, load, springbackUm, pressDepthUm: setUm + springbackUm }
}

/** What stays after pressing so deep. */
function setAfter(deltaYUm: number, pressDepthUm: number): number {
  const depth = pressDepthUm / deltaYUm
  if (depth >= hinge.depth) return pressDepthUm - hinge.load * deltaYUm
  return depth <= 1 ? 0 : deltaYUm * setAt(yieldedWhere(depthAt, depth))
}

/** A set this near to the limit is at it. */
const rounding = 1e-12
