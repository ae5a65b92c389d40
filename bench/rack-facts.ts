import { performance } from 'node:perf_hooks'
import { drawUnit, generatorFrom } from '#engine/numeric/generator.ts'
import { barsFrom, type RackFacts } from '#engine/rack/bar-from.ts'
import type { Check, Reading } from '#model/check.ts'
import { nothingTaken, onTheFirstLine } from '#model/plain-check.ts'
import type { BenchRow } from './bench-row.ts'

const bars = 1000, firstMs = 400, againMs = 60, rounds = 5

/**
 * What checks leave of a rack of many bars, each read at five stations twice over at the plate: all anew, as when the app opens, and
 * once more after one more check, as at every change in the shop.
 */
export function run(): Promise<BenchRow[]> {
  barsFrom(rack(0), { viseId: null })
  const first: number[] = [], again: number[] = []
  let known = bars
  for (let round = 1; round <= rounds; round += 1) {
    const facts = rack(round), more = rack(-round).checks.slice(0, 2)
    first.push(timed(() => { known = Math.min(known, barsFrom(facts, { viseId: null }).filter((bar) => bar.known).length) }))
    again.push(timed(() => { barsFrom({ ...facts, checks: [...facts.checks, ...more] }, { viseId: null }) }))
  }
  const row = (name: string, times: readonly number[], mostMs: number): BenchRow => {
    const ms = Math.min(...times)
    return { name: `rack: ${bars} bars from their checks, ${name}`, figure: `${ms.toFixed(0)} ms, best of ${rounds}`, target: `under ${mostMs} ms`, ratio: ms / mostMs, met: ms < mostMs && known === bars }
  }
  return Promise.resolve([row('all anew', first, firstMs), row('after one more check', again, againMs)])
}

function timed(work: () => void): number {
  const from = performance.now()
  work()
  return performance.now() - from
}

/** Pairs stated, then compared at the plate against a block, two repeats at each of five stations. Invented. */
function rack(round: number): RackFacts {
  const generator = generatorFrom(1), ids = Array.from({ length: bars }, (_, i) => `b${i}`)
  const took: Check['took'] = {
    instrument: null, plate: null, blocks: null,
    readWith: { method: 'compare', resolutionUm: 0.1, limitUm: 0.5, repeatabilityUm: 0.1, plateFlatnessUm: 2, blockLimitUm: 0.3, blockUUm: null, betweenC: 0.5, awayC: 0.5, expansionPerC: 11.5e-6, expansionApartPerC: 1e-6 },
  }
  const check = (id: string, method: Check['method'], day: string, readings: readonly Reading[], part: Partial<Check>): Check =>
    ({ id, method, replaces: null, ...nothingTaken, readings: [...readings], note: '', person: '', device: 'd', atIso: `2026-01-${day}T08:00:00.000Z`, ...part })
  const height = (i: number): number => 8 + ((i >> 1) % 100) * 0.5
  const stations = [5, 40, 75, 110, 145]
  return {
    shop: { limitsUm: { drilling: 25, milling: 10, fineMilling: 5, grinding: 2 } }, events: [],
    bars: ids.map((id, i) => ({ id, saw: {}, code: id, name: '', thicknessMm: 8, thicknessStanding: 'marked', lengthMm: 150, matesId: `m${i >> 1}`, slotId: null, where: { at: 'slot' }, note: '' })),
    checks: ids.flatMap((id, i) => (i % 2 === 1 ? [] : [
      check(`s${i}r${round}`, 'stated', '01', [id, ids[i + 1]!].map((bar) => ({ bar, station: 0, xMm: null, ...onTheFirstLine, text: '', heightMm: height(i) })), {}),
      check(`p${i}r${round}`, 'compare', '02', [id, ids[i + 1]!].flatMap((bar) => [0, 1].flatMap(() => stations.map((xMm, station) => {
        const um = Math.round(30 * drawUnit(generator)) / 10
        return { bar, station, xMm, ...onTheFirstLine, text: `+${um}`, heightMm: height(i) + um / 1000 }
      }))), { took, zero: { on: 'block', heightMm: height(i), text: String(height(i)) }, closing: { text: '0.1', um: 0.1 } }),
    ])),
  }
}
