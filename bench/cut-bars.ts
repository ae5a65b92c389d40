import { readdirSync, readFileSync } from 'node:fs'
import { performance } from 'node:perf_hooks'
import load from 'highs'
import { answerCutBars } from '#engine/make/cut-bars/answer-cut-bars.ts'
import { solveWith } from '#engine/make/solve-with-highs.ts'
import type { Solve } from '#engine/make/solver.ts'
import type { BenchRow } from './bench-row.ts'

type Published = { readonly name: string; readonly capacity: number; readonly items: readonly (readonly [size: number, count: number])[]; readonly optimum: number }
type Shop = { readonly id: string; readonly expect: { readonly status: string; readonly leastStockLength?: number } }

const shortSeconds = 1, longSeconds = 20
/** What shares are to be proven in either time, and to be found at all. */
const provenShort = 0.8, provenLong = 0.87, found = 0.95
/** Patterns listed for the plain way before it is given up. */
const mostPatterns = 100_000

/**
 * Cut lists on the published cases and those of the shop, beside first-fit decreasing and beside HiGHS over the full list of patterns, with the same time each.
 */
export async function run(): Promise<BenchRow[]> {
  const solve = solveWith(await load()), tools = { now: () => performance.now() / 1000, solve }
  const cases = readdirSync('fixtures/published/cutting1d').map((file) => JSON.parse(readFileSync(`fixtures/published/cutting1d/${file}`, 'utf8')) as Published)
  const { cases: shop } = JSON.parse(readFileSync('fixtures/shop/cutting1d/shop.json', 'utf8')) as { cases: readonly Shop[] }
  const ours = (one: Published, secondsMost: number) => answerCutBars({ capacity: one.capacity, items: one.items, secondsMost }, tools)
  const short = cases.map((one) => ours(one, shortSeconds)), long = cases.map((one, k) => (short[k]!.status === 'optimal' ? short[k]! : ours(one, longSeconds)))
  const plain = cases.map((one) => provenPlainly(one, solve, shortSeconds)), firstFit = cases.map((one) => firstFitDecreasing(one) === one.optimum)
  const done = shop.map(({ id: _id, expect, ...raw }) => {
    const from = performance.now(), { status, leastStockLength } = answerCutBars(raw, tools)
    return status === expect.status && leastStockLength === (expect.leastStockLength ?? null) ? performance.now() - from : Infinity
  })
  const shareOf = (list: readonly boolean[]) => list.filter(Boolean).length / list.length, percent = (share: number) => `${(100 * share).toFixed(0)} %`
  const proven = (answers: typeof short) => shareOf(answers.map(({ status, stockCount }, k) => status === 'optimal' && stockCount === cases[k]!.optimum))
  const best = shareOf(long.map(({ stockCount }, k) => stockCount === cases[k]!.optimum)), plainShare = shareOf(plain), inShort = proven(short), inLong = proven(long)
  return [
    { name: `cut-bars: ${shop.length} cases of the shop`, figure: `${done.filter(Number.isFinite).length} right, the slowest ${Math.max(...done).toFixed(0)} ms`, target: 'all, each within 1 s', ratio: Math.max(...done) / 1000, met: done.every((ms) => ms <= 1000) },
    { name: `cut-bars: ${cases.length} published cases, least number found`, figure: `${percent(best)}, first-fit decreasing ${percent(shareOf(firstFit))}`, target: `at least ${percent(found)}`, ratio: best / shareOf(firstFit), met: best >= found },
    { name: `cut-bars: proven in ${shortSeconds} s`, figure: `${percent(inShort)}, HiGHS over all patterns ${percent(plainShare)}`, target: `at least ${percent(provenShort)}`, ratio: inShort / plainShare, met: inShort >= provenShort },
    { name: `cut-bars: proven in ${longSeconds} s`, figure: percent(inLong), target: `at least ${percent(provenLong)}`, ratio: null, met: inLong >= provenLong },
  ]
}

/** One piece after another, the largest first, into the first length it fits. */
function firstFitDecreasing({ capacity, items }: Published): number {
  const rooms: number[] = []
  for (const [size, count] of items.toSorted(([a], [b]) => b - a)) for (let k = 0; k < count; k += 1) {
    const at = rooms.findIndex((room) => room >= size)
    if (at < 0) rooms.push(capacity - size)
    else rooms[at]! -= size
  }
  return rooms.length
}

/** Whether every full pattern can be listed and HiGHS proves the least number over all of them in the time. */
function provenPlainly({ capacity, items, optimum }: Published, solve: Solve, seconds: number): boolean {
  const patterns = fullPatterns(capacity, items)
  if (patterns === null) return false
  const columns = patterns.map((counts) => {
    const rows = [...counts.keys()].filter((k) => counts[k]! > 0)
    return { cost: 1, most: Infinity, isWhole: true, rows, values: rows.map((k) => counts[k]!) }
  })
  const { status, bound } = solve({ columns, rows: items.map(([, count]) => ({ least: count, most: Infinity })) }, seconds)
  return status === 'optimal' && Math.round(bound) === optimum
}

/** How many of each, in every way that leaves no room for one more; null: too many ways. */
function fullPatterns(capacity: number, items: Published['items']): number[][] | null {
  const found: number[][] = [], counts = items.map(() => 0)
  const go = (k: number, room: number): boolean => {
    if (k === items.length) {
      if (items.every(([size, count], at) => counts[at] === count || size > room)) found.push([...counts])
      return found.length <= mostPatterns
    }
    const [size, count] = items[k]!
    for (let times = Math.min(count, Math.floor(room / size)); times >= 0; times -= 1) {
      counts[k] = times
      if (!go(k + 1, room - times * size)) return false
    }
    counts[k] = 0
    return true
  }
  return go(0, capacity) ? found : null
}
