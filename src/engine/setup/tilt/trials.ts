import type { KernelLists } from '#engine/kernel/lists.ts'
import { bytesForNormals, Normals } from '#engine/numeric/draw-normals.ts'
import { drawUnit, type Generator, generatorFrom } from '#engine/numeric/generator.ts'
import { linesFrom, type Settle, settleOn, type Slopes } from '#engine/setup/tilt/lines.ts'
import { type Mix, mixerOf } from '#engine/setup/tilt/mix.ts'
import { Pivots, type Spot } from '#engine/setup/tilt/pivots.ts'
import type { Spread, TiltQuestion, TiltSource } from '#engine/setup/tilt/tilt.ts'
import { walkTrials } from '#engine/setup/tilt/walk.ts'

/** Trials drawn at a time. Part of what a seed means: another number here gives other draws. */
export const batchTrials = 256

/** Where the load stands: one place, or two a hair to either side where it stands over a line through two points. */
type Loads = readonly (readonly [number, number])[]

/** Bytes that `slopesOf` needs at most: the draws of each source, heights of each spot and what finds their seats, and some for all. */
export const bytesForSlopes = ({ spots, sources }: TiltQuestion): number => bytesForNormals + 8 * batchTrials * (sources.length + 4 * spots.length + 32)

/** Trials done before a worker may report or stop; whole batches, and few enough to be counted while they are at hand. */
const pauseEvery = 80 * batchTrials

/** Draws slopes of seats, µm/mm, into two lists of whole batches; yields how many are done, every now and then and at the end. */
export function* slopesOf(question: TiltQuestion, loads: Loads, lists: KernelLists, along: Float64Array, across: Float64Array): globalThis.Generator<number, void> {
  const { spots, sources, seed, nominalUm, jawSlopeUmPerMm } = question, held = jawSlopeUmPerMm !== null
  const ofKind = (dist: Spread['dist']) => sources.filter(({ spread }) => spread.dist === dist)
  const normal = ofKind('normal'), drawn = [...normal, ...ofKind('rect')], normals = new Normals(lists, generatorFrom(seed))
  const draws = lists.floats(drawn.length * batchTrials), normalDraws = draws.subarray(0, normal.length * batchTrials), evenDraws = draws.subarray(normalDraws.length)
  const termsOf = (share: (source: TiltSource) => number): Mix['terms'] =>
    drawn.map((source, s) => ({ factor: scaleOf(source) * share(source), draws: draws.subarray(s * batchTrials, (s + 1) * batchTrials) })).filter(({ factor }) => factor !== 0)

  const lines = loads.map((load) => linesFrom(spots, load, held)), order = lines[0]?.order ?? [...spots.keys()]
  const slopes = lists.floats(batchTrials), heights = lists.floats(order.length * batchTrials), into = { heights, along, across }
  const settle = lines.map((on, k) => (on === null ? walkOn(spots, loads[k]!, into) : settleOn(on, lists, into)))
  const mixSlopes = held ? mixerOf([{ base: jawSlopeUmPerMm, terms: termsOf(({ onSlope }) => onSlope) }], lists, slopes) : null
  const mixHeights = mixerOf(order.map((i) => (i < 0 ? { base: 0, terms: [] } : {
    // a common height tilts nothing and costs digits; the slope that the jaw gives is taken off
    base: nominalUm[i]! - nominalUm[0]!, terms: [...termsOf(({ onPoints }) => onPoints[i]!), ...(held ? [{ factor: -spots[i]!.yMm, draws: slopes }] : [])],
  })), lists, heights)

  for (let done = 0, batch = 0; done < along.length; batch += 1) {
    normals.fill(normalDraws)
    drawEven(normals.generator, evenDraws)
    mixSlopes?.()
    mixHeights()
    settle[batch % settle.length]!(done)
    if (held) across.set(slopes, done)
    done += batchTrials
    if (done % pauseEvery === 0 || done === along.length) yield done
  }
}

function walkOn(spots: readonly Spot[], load: Loads[number], { heights, along, across }: Slopes): Settle {
  const pivots = new Pivots(spots, load)
  return (from) => walkTrials(pivots, spots, heights, along.subarray(from, from + batchTrials), across.subarray(from, from + batchTrials))
}

const scaleOf = ({ spread }: TiltSource): number => (spread.dist === 'normal' ? spread.sd : spread.dist === 'rect' ? spread.half : 0)

/** Values from −1 to 1, all alike likely. */
function drawEven(generator: Generator, into: Float64Array): void {
  for (let k = 0; k < into.length; k += 1) into[k] = 2 * drawUnit(generator) - 1
}
