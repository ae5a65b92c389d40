import { attemptOr } from '#model/attempt.ts'
import { readLengthMm, wordLength } from '#model/length.ts'
import type { Standing, Trust } from '#model/bar.ts'
import { readLabel } from '#model/label-code.ts'
import type { Units } from '#model/shop-record.ts'

/** What a search looks at in a bar. */
export type Findable = {
  readonly code: string
  readonly name: string
  readonly heightMm: number | null
  /** What people call it by, where that is another height. */
  readonly calledMm: number | null
  readonly thicknessMm: number
  readonly lengthMm: number
  readonly standing: Standing
  readonly trust: Trust
  /** Names; null: none. */
  readonly mates: string | null
  readonly slot: string | null
  /** Who or what has it; null: in its slot. */
  readonly elsewhere: string | null
  /** Further words it is found by: `overdue`, `orphan`. */
  readonly more: readonly string[]
}

/** Finds bars by what was typed, told by their places in the list. */
export type Finder = (typed: string) => readonly number[]

/** A height counts as the one asked for within this: a measured 34,998 is found by `35`. */
const nearMm = 0.05

/**
 * A search over bars, made ready once for as many questions as one likes; lists of ten thousand bars answer between two keys.
 *
 * Understood, as hands type it: the begin of a height (`3`, `35`, `7/8`), a range of heights (`30-32`, `1 1/4-1 3/8`, `30+`), a thickness (`t8`), a length
 * (`l150`), two or three sizes as on the list (`30x8`, `8 × 150`, `30x8x150`), the begin of a slot or code, the text of a scanned label, part of a name, of mates or of who has it, a state (`look first`, `beater`, `odd`, `marked`).
 * Several words must all fit the same bar.
 */
export function finderOf(bars: readonly Findable[], units: Units): Finder {
  const entries = bars.map((bar) => entryOf(bar, units)), all = [...bars.keys()]
  return (typed) => {
    const phrase = plain(typed)
    if (phrase === '') return all
    const label = readLabel(typed)
    if (label !== null && label.kind !== 'slot') {
      const own = all.filter((k) => bars[k]!.code === label.code)
      if (own.length > 0) return own
    }
    const { tests, rest } = sizesIn(phrase, units), whole = rest === '' ? null : testOf(rest, units), words = rest.split(' ').filter((word) => word !== '').map((word) => testOf(word, units))
    return all.filter((k) => {
      const entry = entries[k]!
      return tests.every((test) => test(entry.bar)) && (whole === null || whole(entry) || words.every((test) => test(entry)))
    })
  }
}

type Entry = { readonly bar: Findable; readonly begins: readonly string[]; readonly holds: string }
type SizeTest = (bar: Findable) => boolean

function entryOf(bar: Findable, units: Units): Entry {
  const heights = [...new Set([bar.heightMm, bar.calledMm])].flatMap((mm) => (mm === null ? [] : [wordLength(mm, units), wordLength(mm, units, { fractions: false })]))
  return {
    bar, begins: [...new Set([...heights, bar.slot ?? '', bar.code].map(plain))],
    // a line between them, so that no word is found across two
    holds: [bar.name, bar.mates ?? 'odd', bar.elsewhere ?? '', bar.trust, bar.trust === 'drill bar' ? 'beater' : '', bar.standing, ...bar.more].map(plain).join('\n'),
  }
}

/** Thickness, length, sizes side by side and a range of heights are taken out of the phrase; the rest is looked for as words. */
function sizesIn(phrase: string, units: Units): { readonly tests: readonly SizeTest[]; readonly rest: string } {
  const tests: SizeTest[] = [], rest: string[] = []
  for (const word of phrase.replace(/(?<= |^)([tl]) (?=[\d.])/g, '$1').replace(/(?<=[\d"]) ?[x×*] ?(?=[\d.])/g, '×').split(' ')) {
    const [, kind, text] = /^(t|l)=?(\d\S*|\.\d\S*)$/.exec(word) ?? [], mm = text === undefined ? null : lengthFrom(text, units), beside = word.includes('×') ? sizesBeside(word, units) : null
    if (beside !== null) tests.push(beside)
    else if (mm === null) rest.push(word)
    else tests.push((bar) => isNear(kind === 't' ? bar.thicknessMm : bar.lengthMm, mm))
  }
  const left = rest.join(' '), range = rangeFrom(left, units)
  if (range === null) return { tests, rest: left }
  return { rest: range.rest, tests: [...tests, ({ heightMm }) => heightMm !== null && heightMm >= range.lowMm - nearMm && heightMm <= range.highMm + nearMm] }
}

/** `30×8×150`; two are height and thickness, or thickness and length. */
function sizesBeside(word: string, units: Units): SizeTest | null {
  const sizes = word.split('×').map((text) => lengthFrom(text, units)), [a, b, c] = sizes
  if (a === undefined || b === undefined || a === null || b === null || c === null || sizes.length > 3) return null
  const begins: SizeTest = ({ heightMm, calledMm, thicknessMm }) => (isNear(heightMm, a) || isNear(calledMm, a)) && isNear(thicknessMm, b)
  return c === undefined ? (bar) => begins(bar) || (isNear(bar.thicknessMm, a) && isNear(bar.lengthMm, b)) : (bar) => begins(bar) && isNear(bar.lengthMm, c)
}

const isNear = (sizeMm: number | null, askedMm: number): boolean => sizeMm !== null && Math.abs(sizeMm - askedMm) <= nearMm

/** `30-32`, `1 1/4 – 1 3/8`, `30+`, and what follows it. */
function rangeFrom(text: string, units: Units): { readonly lowMm: number; readonly highMm: number; readonly rest: string } | null {
  const [, from, to, rest = ''] = /^([\d./" ]+?(?:mm|in)?)\s*(?:-|–|\.\.|\bto\b)\s*([\d./"]+(?: \d+\/\d+)?(?:mm|in)?"?)(?: (.*))?$/.exec(text) ?? []
  const up = from === undefined ? /^([\d./" ]+?(?:mm|in)?"?)\+(?: (.*))?$/.exec(text) : null, lowMm = up === null ? null : lengthFrom(up[1]!, units)
  if (lowMm !== null) return { lowMm, highMm: Infinity, rest: up?.[2] ?? '' }
  const a = from === undefined ? null : lengthFrom(from, units), b = to === undefined ? null : lengthFrom(to, units)
  return a === null || b === null ? null : { lowMm: Math.min(a, b), highMm: Math.max(a, b), rest }
}

function testOf(words: string, units: Units): (entry: Entry) => boolean {
  const mm = lengthFrom(words, units)
  return ({ bar: { heightMm }, begins, holds }) =>
    begins.some((text) => text.startsWith(words)) || holds.includes(words) || (mm !== null && heightMm !== null && Math.abs(mm - heightMm) <= nearMm)
}

/** What is no length may still be a name. */
function lengthFrom(text: string, units: Units): number | null {
  return attemptOr(() => readLengthMm(text, units.length), null)
}

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ').replaceAll(',', '.').toLowerCase()
