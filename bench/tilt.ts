import { cpuUsage } from 'node:process'
import { putBack, takeKernel } from '#engine/kernel/kernel.ts'
import { KernelLists } from '#engine/kernel/lists.ts'
import { bytesForNormals, Normals } from '#engine/numeric/draw-normals.ts'
import { drawNormals } from '#engine/numeric/example-normals.ts'
import { generatorFrom } from '#engine/numeric/generator.ts'
import { seatOf } from '#engine/setup/seat/seat.ts'
import { type TiltQuestion, tiltOf } from '#engine/setup/tilt/tilt.ts'
import { batchTrials } from '#engine/setup/tilt/trials.ts'
import type { BenchRow } from './bench-row.ts'
import { threeBars, twoBars } from './tilt-questions.ts'

const trials = 1_000_000, rounds = 5, most = 2.5

/**
 * The prediction of the tilt on 12 points beside drawing the same normals alone, that drawing beside Box–Muller on the
 * engine's own Math.random, and the seat of a trial by itself. Each is the best of some rounds, in turn in one run, in time
 * of the processor: the figures are for one core, whoever else is at work.
 */
export function run(): Promise<BenchRow[]> {
  const bars = twoBars(trials), columns = bars.sources.length, best = { tilt: Infinity, three: Infinity, draw: Infinity, boxMuller: Infinity, seat: Infinity }
  const keep = (name: keyof typeof best, ms: number): void => { best[name] = Math.min(best[name], ms) }
  for (let round = 0; round < rounds; round += 1) {
    keep('draw', timed(() => drawAlone(columns)))
    keep('tilt', timed(() => tiltOf(bars)))
    keep('boxMuller', timed(() => boxMuller(columns)))
    keep('three', timed(() => tiltOf(threeBars(trials))))
    keep('seat', timed(() => seatAlone(bars)) * (trials / seats))
  }
  const ns = (ms: number): string => `${((ms * 1e6) / trials).toFixed(0)} ns`
  return Promise.resolve([
    { name: 'tilt: 12 points on two bars, 10⁶ trials, beside its normals alone', figure: `${ns(best.tilt)} against ${ns(best.draw)} a trial`, target: `at most ${most} ×`, ratio: best.tilt / best.draw, met: best.tilt <= most * best.draw },
    { name: 'tilt: the same normals, beside Box–Muller on Math.random', figure: `${ns(best.draw)} against ${ns(best.boxMuller)} a trial`, target: 'faster', ratio: best.boxMuller / best.draw, met: best.draw < best.boxMuller },
    { name: 'tilt: 12 points on three bars', figure: `${ns(best.three)} a trial`, target: 'shown', ratio: best.three / best.draw, met: true },
    { name: 'tilt: beside a whole seat for each trial', figure: `${ns(best.tilt)} against ${ns(best.seat)} a trial`, target: 'at least 50 times as fast', ratio: best.seat / best.tilt, met: best.seat >= 50 * best.tilt },
  ])
}

const seats = 2000

function timed(work: () => unknown): number {
  const from = cpuUsage()
  work()
  const { user, system } = cpuUsage(from)
  return (user + system) / 1000
}

function drawAlone(columns: number): number {
  const kernel = takeKernel(8 * columns * batchTrials + bytesForNormals), lists = new KernelLists(kernel), normals = new Normals(lists, generatorFrom(1)), draws = lists.floats(columns * batchTrials)
  for (let done = 0; done < trials; done += batchTrials) normals.fill(draws)
  putBack(kernel)
  return draws[0]!
}

function boxMuller(columns: number): number {
  const draws = new Float64Array(columns * batchTrials)
  for (let done = 0; done < trials; done += batchTrials) {
    for (let k = 0; k < draws.length; k += 2) {
      const radius = Math.sqrt(-2 * Math.log(1 - Math.random())), angle = 2 * Math.PI * Math.random()
      draws[k] = radius * Math.cos(angle); draws[k + 1] = radius * Math.sin(angle)
    }
  }
  return draws[0]!
}

/** The seat as it is worked out for one case, all ways to lie included. */
function seatAlone({ part, spots, nominalUm, sources }: TiltQuestion): number {
  const generator = generatorFrom(1), draws = new Float64Array(sources.length)
  let sum = 0
  for (let t = 0; t < seats; t += 1) {
    drawNormals(generator, draws)
    const points = spots.map((spot, i) => ({ ...spot, zUm: nominalUm[i]! + sources.reduce((um, { spread, onPoints }, s) => um + (spread.dist === 'normal' ? spread.sd * onPoints[i]! * draws[s]! : 0), 0) }))
    const seat = seatOf({ part, points, jawSlopeUmPerMm: null })
    if (seat.status === 'seated') sum += seat.tiltAlongUm
  }
  return sum
}
