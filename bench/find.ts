import { performance } from 'node:perf_hooks'
import { readLengthMm, wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import { drawUnit, generatorFrom } from '#engine/numeric/generator.ts'
import { type Findable, finderOf } from '#engine/rack/find.ts'
import type { BenchRow } from './bench-row.ts'

const barCount = 10_000, frameMs = 16.7, units: Units = { length: 'mm', decimalMark: '.', words: 'UK' }
/** What a hand types, key by key. */
const typed = ['3', '35', '30-', '30-3', '30-32', '30-32 t8', 'look first', 'a3', 'odd', 'no such bar', '7/8']

/** A search of 10 000 bars between two keys, beside the plain way: every bar worded and read anew for each key. */
export function run(): Promise<BenchRow[]> {
  const bars = rackOf(), from = performance.now(), find = finderOf(bars, units), builtMs = performance.now() - from
  const worst = (work: (text: string) => number) => typed.map((text) => {
    let ms = Infinity, count = 0
    for (let round = 0; round < 7; round += 1) {
      const begun = performance.now()
      count = work(text)
      ms = Math.min(ms, performance.now() - begun)
    }
    return { text, ms, count }
  })
  const ours = worst((text) => find(text).length), simple = typed.filter((text) => !text.includes('-') && !text.includes(' t')), plain = worst((text) => (simple.includes(text) ? plainFind(bars, text) : 0))
  const slowest = Math.max(...ours.map(({ ms }) => ms)), sum = (rows: typeof ours) => rows.filter(({ text }) => simple.includes(text)).reduce((all, { ms }) => all + ms, 0)
  const same = ours.every(({ text, count }, k) => !simple.includes(text) || count === plain[k]!.count)
  return Promise.resolve([
    { name: `find: a key among ${barCount} bars`, figure: `${slowest.toFixed(1)} ms at worst, made ready in ${builtMs.toFixed(0)} ms, ${ours.map(({ count }) => count).join(' ')} found`, target: 'within a frame', ratio: slowest / frameMs, met: slowest <= frameMs },
    { name: 'find: beside the plain way', figure: `${sum(ours).toFixed(1)} ms against ${sum(plain).toFixed(0)} ms for ${simple.length} keys, ${same ? 'same' : 'OTHER'} bars`, target: 'at least 3 times as fast', ratio: sum(plain) / sum(ours), met: same && sum(plain) > 3 * sum(ours) },
  ])
}

/** Invented. */
function rackOf(): readonly Findable[] {
  const generator = generatorFrom(3), pick = <One>(all: readonly One[]): One => all[Math.floor(drawUnit(generator) * all.length)]!
  return Array.from({ length: barCount }, (_, k): Findable => {
    const heightMm = Math.round(1000 * (5 + 60 * drawUnit(generator))) / 1000
    return {
      code: `${k}`.padStart(8, '2').replaceAll(/[01]/g, 'Z'), name: `N${k}`, heightMm, calledMm: Math.round(heightMm * 10) / 10, thicknessMm: pick([3, 5, 8, 10]), lengthMm: pick([100, 150]), standing: pick(['measured', 'marked']),
      trust: pick(['trusted', 'look first', 'drill bar']), mates: pick(['A', 'B', null]), slot: `${pick(['A', 'B', 'C'])}${k % 90}`, elsewhere: pick([null, null, 'JO']), more: [],
    }
  })
}

function plainFind(bars: readonly Findable[], typedText: string): number {
  const plain = (text: string) => text.trim().replace(/\s+/g, ' ').replaceAll(',', '.').toLowerCase(), words = plain(typedText)
  const read = (text: string): number | null => { try { return readLengthMm(text, units.length) } catch (error) { if (error instanceof Refusal) return null; throw error } }
  const fits = (bar: Findable, text: string): boolean => {
    const heights = [bar.heightMm, bar.calledMm].flatMap((mm) => (mm === null ? [] : [wordLength(mm, units), wordLength(mm, units, { fractions: false })])), mm = read(text)
    return [...heights, bar.slot ?? '', bar.code].some((one) => plain(one).startsWith(text))
      || [bar.name, bar.mates ?? 'odd', bar.elsewhere ?? '', bar.trust, bar.trust === 'drill bar' ? 'beater' : '', bar.standing].some((one) => plain(one).includes(text)) || (mm !== null && bar.heightMm !== null && Math.abs(mm - bar.heightMm) <= 0.05)
  }
  return bars.filter((bar) => fits(bar, words) || words.split(' ').every((word) => fits(bar, word))).length
}
