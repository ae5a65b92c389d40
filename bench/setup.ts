import { performance } from 'node:perf_hooks'
import type { Bar } from '#model/bar.ts'
import type { Cut } from '#model/cut.ts'
import type { SetupQuestion } from '#model/setup.ts'
import { ways } from '#model/wishes.ts'
import { drawUnit, generatorFrom } from '#engine/numeric/generator.ts'
import { chooseBars } from '#engine/setup/choose.ts'
import { indexRack } from '#engine/setup/index-rack.ts'
import { defaultWishes } from '#engine/setup/read-wishes.ts'
import type { BenchRow } from './bench-row.ts'

const sizes = [1_000, 10_000, 100_000] as const
const frameMs = 16, mostRatio = 2, rounds = 3, runs = 21, warmUps = 4

/**
 * One question with 20 through holes to racks of growing size, each indexed once: how long the best thirty take, beside a
 * frame of the screen, and beside the rack a tenth as large. In every kind of answer: found at once, ranked by match, in
 * one way only, and nothing serves (what is nearest then has to be found among all stacks).
 */
export function run(): Promise<BenchRow[]> {
  const racks = sizes.map((count) => {
    const bars = rackOf(count), from = performance.now(), index = indexRack(bars)
    return { count, index, indexMs: performance.now() - from }
  })
  return Promise.resolve([...questions()].flatMap(([kind, question]) => {
    // the racks take turns; of each the best of its rounds, in a round the middle of its runs
    const medians = racks.map(() => Infinity)
    for (let round = 0; round < rounds; round += 1) {
      racks.forEach(({ index }, k) => {
        const times = Array.from({ length: warmUps + runs }, () => timed(() => chooseBars(question, index)))
        medians[k] = Math.min(medians[k]!, medianOf(times.slice(warmUps)))
      })
    }
    return racks.map(({ count, indexMs }, k): BenchRow => {
      const ms = medians[k]!, ratio = k === 0 ? ms / frameMs : ms / medians[k - 1]!
      return {
        name: `setup, ${kind}: ${count.toLocaleString('en').replace(/,/g, ' ')} bars`, figure: `${ms.toFixed(2)} ms, index ${indexMs.toFixed(0)} ms`,
        target: k === 0 ? `within ${frameMs} ms` : `at most ${mostRatio} × a tenth of the bars`, ratio, met: ratio <= (k === 0 ? 1 : mostRatio),
      }
    })
  }))
}

function questions(): Map<string, SetupQuestion> {
  const draw = generatorFrom(3), between = (from: number, to: number) => from + (to - from) * drawUnit(draw)
  const holes = Array.from({ length: 20 }, (): Cut => ({
    kind: 'hole', tool: 'drill', through: true, xMm: between(5, 115), yMm: between(3, 77), diameterMm: between(3, 8), runThroughMm: 1.5, pointAngleDeg: 118, leadThreads: 4,
  }))
  const ordinary: SetupQuestion = {
    vise: { jawHeightMm: 45, openingMm: 150 }, part: { shape: 'block', betweenJawsMm: 80, alongJawsMm: 120, heightMm: 25, hollows: [] },
    cuts: [{ kind: 'face', depthMm: 3, overJaw: true, runThroughMm: 0.5 }, ...holes], wishes: defaultWishes, ways, most: 30, rejectedMost: 0,
  }
  return new Map([
    ['thirty best', ordinary],
    ['with a tolerance', { ...ordinary, wishes: { ...defaultWishes, toleranceUm: 20 } }],
    ['stacks only', { ...ordinary, ways: ['stack'] }],
    ['nothing serves', { ...ordinary, part: { ...ordinary.part, heightMm: 13 } }],
  ])
}

/** Pairs of 40 thicknesses and lengths, every height measured and different, some not to be trusted, some out. Invented. */
function rackOf(count: number): readonly Bar[] {
  const draw = generatorFrom(count), pick = <Value>(values: readonly Value[]) => values[Math.floor(values.length * drawUnit(draw))]!
  return Array.from({ length: count / 2 }, (_, pair) => {
    const heightMm = 10 + 50 * ((pair + drawUnit(draw)) / (count / 2)), thicknessMm = pick([4, 5, 6, 8, 10, 12, 14, 16]), lengthMm = pick([100, 125, 150, 160, 200])
    const trust = pick(['trusted', 'trusted', 'trusted', 'look first', 'drill bar'] as const), where = pick(['slot', 'slot', 'slot', 'slot', 'out'] as const)
    const thicknessStanding = pick(['measured', 'marked'] as const)
    return ['a', 'b'].map((mate, k): Bar => ({
      id: `${pair}${mate}`, heightMm: Math.round(1e5 * heightMm + 300 * k * drawUnit(draw)) / 1e5, thicknessMm, lengthMm, mates: String(pair), trust, standing: 'measured', thicknessStanding, where,
    }))
  }).flat()
}

function timed(work: () => unknown): number {
  const from = performance.now()
  work()
  return performance.now() - from
}

const medianOf = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!
