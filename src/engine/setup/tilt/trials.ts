import { drawUnit, type Generator, generatorFrom } from '#engine/numeric/generator.ts'
import { drawNormals } from '#engine/numeric/draw-normals.ts'
import { Pivots } from '#engine/setup/tilt/pivots.ts'
import { type Lines, linesFrom, rollTrials } from '#engine/setup/tilt/roll.ts'
import type { TiltQuestion, TiltSource } from '#engine/setup/tilt/tilt.ts'
import { walkTrials } from '#engine/setup/tilt/walk.ts'

/** Trials drawn at a time. Part of what a seed means: another number here gives other draws. */
export const batchTrials = 256

/** Where the load stands: one place, or two a hair to either side where it stands over a line through two points. */
type Loads = readonly (readonly [number, number])[]

/** Draws the slopes of `trials` seats into two lists, batch by batch; yields how many are done. Slopes in µm/mm. */
export function* slopesOf(question: TiltQuestion, loads: Loads, along: Float64Array, across: Float64Array): globalThis.Generator<number, void> {
  const { spots, sources, trials, jawSlopeUmPerMm } = question, n = spots.length, generator = generatorFrom(question.seed)
  const drawn = sources.filter(({ spread }) => spread.dist !== 'none').toSorted((a, b) => Number(a.spread.dist !== 'normal') - Number(b.spread.dist !== 'normal'))
  const draws = new Float64Array(drawn.length * batchTrials), normals = drawn.filter(({ spread }) => spread.dist === 'normal').length * batchTrials
  const settle = loads.map((load) => settleOn(question, load)), slopeMix = mixOf(jawSlopeUmPerMm ?? 0, drawn, ({ onSlope }) => onSlope)
  // a common height tilts nothing and costs digits
  const mixes = question.nominalUm.map((um, i) => mixOf(um - question.nominalUm[0]!, drawn, ({ onPoints }) => onPoints[i]!))
  const heights = new Float64Array(n * batchTrials + 1), tilts = new Float64Array(batchTrials)
  for (let done = 0, batch = 0; done < trials; batch += 1) {
    drawNormals(generator, draws.subarray(0, normals))
    drawEven(generator, draws.subarray(normals))
    const { order, run } = settle[batch % settle.length]!, count = Math.min(batchTrials, trials - done)
    order.forEach((i, k) => mix(draws, mixes[i]!, heights, k, n))
    if (jawSlopeUmPerMm !== null) {
      mix(draws, slopeMix, tilts, 0, 1)
      order.forEach((i, k) => { const { yMm } = spots[i]!; for (let t = 0; t < batchTrials; t += 1) heights[t * n + k]! -= tilts[t]! * yMm })
    }
    run(heights, count, along.subarray(done, done + count), across.subarray(done, done + count))
    if (jawSlopeUmPerMm !== null) across.set(tilts.subarray(0, count), done)
    done += count
    yield done
  }
}

/** In which order the points are gone through, and how the seats of a batch are found. */
type Settle = { readonly order: readonly number[]; readonly run: (heights: Float64Array, trials: number, along: Float64Array, across: Float64Array) => void }

function settleOn({ spots, jawSlopeUmPerMm }: TiltQuestion, load: readonly [number, number]): Settle {
  const lines: Lines | null = linesFrom(spots, load, jawSlopeUmPerMm !== null)
  if (lines !== null) return { order: lines.order, run: (...batch) => rollTrials(lines, ...batch) }
  const pivots = new Pivots(spots, load)
  return { order: [...spots.keys()], run: (...batch) => walkTrials(pivots, spots, ...batch) }
}

const scaleOf = ({ spread }: TiltSource): number => (spread.dist === 'normal' ? spread.sd : spread.dist === 'rect' ? spread.half : 0)

/** Values from −1 to 1, all alike likely. */
function drawEven(generator: Generator, into: Float64Array): void {
  for (let k = 0; k < into.length; k += 1) into[k] = 2 * drawUnit(generator) - 1
}

/** A height or slope as it is mixed from draws: base + Σ factor · draw. */
type Mix = { readonly base: number; readonly terms: readonly { readonly factor: number; readonly from: number }[] }

function mixOf(base: number, drawn: readonly TiltSource[], share: (source: TiltSource) => number): Mix {
  return { base, terms: drawn.map((source, s) => ({ factor: scaleOf(source) * share(source), from: s * batchTrials })).filter(({ factor }) => factor !== 0) }
}

/** One mix for each trial of a batch, every `stride` places from `start`. Most have two terms: a bar's error and a point's own. */
function mix(draws: Float64Array, { base, terms: [first, second, ...rest] }: Mix, into: Float64Array, start: number, stride: number): void {
  const f1 = first?.factor ?? 0, f2 = second?.factor ?? 0, d1 = first?.from ?? 0, d2 = second?.from ?? 0
  if (first === undefined) for (let t = 0; t < batchTrials; t += 1) into[start + t * stride] = base
  else for (let t = 0, at = start; t < batchTrials; t += 1, at += stride) into[at] = base + f1 * draws[d1 + t]! + f2 * draws[d2 + t]!
  for (const { factor, from } of rest) for (let t = 0; t < batchTrials; t += 1) into[start + t * stride]! += factor * draws[from + t]!
}
