import { performance } from 'node:perf_hooks'
import edmondsBlossom from 'edmonds-blossom'
import { drawNormals } from '#engine/numeric/example-normals.ts'
import { drawUnit, generatorFrom } from '#engine/numeric/generator.ts'
import { matesOf, type Paired } from '#engine/inspect/mates.ts'
import type { BenchRow } from './bench-row.ts'

type Rows = readonly (readonly number[])[]

const mostMs = 1000

/**
 * The best mates out of a pile: how long the proof takes, beside a general matching library, beside trying every pairing, and
 * what taking the closest first would cost.
 */
export function run(): Promise<BenchRow[]> {
  const large = pile(2000, 1), middling = pile(500, 2), small = Array.from({ length: 20 }, (_, i) => pile(10, 3 + i))
  const pairs = (rows: Rows, k: number): Paired => matesOf({ kind: 'profile', profiles: rows, k }) as Paired
  pairs(middling, 125)
  const proof = timed(() => pairs(large, 500)), ours = timed(() => pairs(middling, 125)), plain = timed(() => plainWay(middling, 125))
  const fast = timed(() => small.map((rows) => pairs(rows, 4).worst)), tried = timed(() => small.map((rows) => leastOfAll(rows, [...rows.keys()], 4)))
  const closest = closestFirst(large, 1000), every = pairs(large, 1000)
  return Promise.resolve([
    { name: 'mates: 2 000 bars, 500 pairs, proven', figure: `${proof.ms.toFixed(0)} ms`, target: `under ${mostMs} ms`, ratio: proof.ms / mostMs, met: proof.ms < mostMs && proof.value.pairsBelow < 500 },
    {
      name: 'mates: 500 bars, 125 pairs, beside a general matching library', figure: `${ours.ms.toFixed(1)} ms against ${plain.ms.toFixed(0)} ms, same worst`,
      target: 'at least 10 times as fast', ratio: plain.ms / ours.ms, met: plain.ms > 10 * ours.ms && plain.value === ours.value.worst,
    },
    {
      name: 'mates: 20 piles of 10 bars, beside every pairing', figure: `${fast.ms.toFixed(1)} ms against ${tried.ms.toFixed(0)} ms, same worst`,
      target: 'the same worst pair', ratio: tried.ms / fast.ms, met: tried.value.every((worst, i) => worst === fast.value[i]),
    },
    {
      name: 'mates: 2 000 bars, all paired, beside closest first', figure: `worst ${every.worst.toFixed(1)} against ${closest.toFixed(1)} µm`,
      target: 'never worse', ratio: closest / every.worst, met: every.worst <= closest,
    },
  ])
}

function timed<Value>(work: () => Value): { readonly ms: number; readonly value: Value } {
  const from = performance.now(), value = work()
  return { ms: performance.now() - from, value }
}

/** Ground bars of one nominal height: 60 µm apart at most, tapered and waved by some µm, read to 0.1. Invented. */
function pile(count: number, seed: number): Rows {
  const generator = generatorFrom(seed), noise = new Float64Array(4 * count)
  drawNormals(generator, noise)
  return Array.from({ length: count }, (_, i) => {
    const height = 60 * drawUnit(generator), taper = 2 * noise[4 * i]!
    return [-taper, 0, taper].map((lean, s) => Math.round(10 * (height + lean + noise[4 * i + 1 + s]!)) / 10)
  })
}

const costOf = (a: readonly number[], b: readonly number[]): number => {
  let straight = 0, turned = 0
  for (let s = 0; s < a.length; s += 1) { straight = Math.max(straight, Math.abs(a[s]! - b[s]!)); turned = Math.max(turned, Math.abs(a[s]! - b[b.length - 1 - s]!)) }
  return Math.min(straight, turned)
}

/** Every pair listed, the limit halved, and a general library asked for a largest matching at each. */
function plainWay(rows: Rows, k: number): number {
  const edges = rows.flatMap((a, i) => rows.slice(i + 1).map((b, j) => [i, i + 1 + j, costOf(a, b)] as const)), limits = [...new Set(edges.map(([, , cost]) => cost))].sort((a, b) => a - b)
  let low = 0, high = limits.length - 1
  while (low < high) {
    const middle = (low + high) >> 1, matched = edmondsBlossom(edges.filter(([, , cost]) => cost <= limits[middle]!).map(([i, j]) => [i, j, 1]), true)
    if (matched.filter((other) => other !== -1).length / 2 >= k) high = middle; else low = middle + 1
  }
  return limits[low]!
}

/** Worst pair of the best of all ways to make k pairs: the first bar goes with nobody, or with each other one. */
function leastOfAll(rows: Rows, left: readonly number[], k: number): number {
  if (k === 0) return 0
  if (left.length < 2 * k) return Infinity
  const [i, ...rest] = left as [number, ...number[]]
  return Math.min(leastOfAll(rows, rest, k), ...rest.map((j) => Math.max(costOf(rows[i]!, rows[j]!), leastOfAll(rows, rest.filter((one) => one !== j), k - 1))))
}

/** Worst pair when the two closest bars left are taken each time. */
function closestFirst(rows: Rows, k: number): number {
  const edges = rows.flatMap((a, i) => rows.slice(i + 1).map((b, j) => [i, i + 1 + j, costOf(a, b)] as const)).sort((one, other) => one[2] - other[2])
  const taken = new Set<number>()
  let pairs = 0
  for (const [i, j, cost] of edges) {
    if (taken.has(i) || taken.has(j)) continue
    taken.add(i); taken.add(j)
    pairs += 1
    if (pairs === k) return cost
  }
  return Infinity
}
