import { readLengthMm, wordLength } from '#model/length.ts'
import { Refusal } from '#model/refusal.ts'
import type { Units } from '#model/shop-record.ts'
import type { RackBar, RackGroup } from '#web/rack/rack-bars.ts'

/** A height counts as the one asked for within this: a measured 34,998 is found by `35`. */
const nearMm = 0.05

/**
 * The groups with a bar that is meant by what was typed, as it is typed: the begin of a height (`3`, `35`, `7/8`), of a slot
 * or code, part of a name, a state. Several words must all fit the same bar.
 */
export function findBars(groups: readonly RackGroup[], typed: string, units: Units): readonly RackGroup[] {
  const words = plain(typed)
  if (words === '') return groups
  return groups.filter(({ bars }) => bars.some((bar) => fits(bar, words, units) || words.split(' ').every((word) => fits(bar, word, units))))
}

function fits({ record, heightMm, calledMm, standing, trust, mates, slot, elsewhere }: RackBar, words: string, units: Units): boolean {
  const heights = [heightMm, calledMm].flatMap((mm) => (mm === null ? [] : [wordLength(mm, units), wordLength(mm, units, { fractions: false })]))
  const begins = [...heights, slot?.name ?? '', record.code]
  const holds = [record.name, mates?.name ?? '', elsewhere ?? '', trust, trust === 'drill bar' ? 'beater' : '', mates ? '' : 'odd', standing]
  return begins.some((text) => plain(text).startsWith(words)) || holds.some((text) => plain(text).includes(words)) || isHeight(heightMm, words, units)
}

function isHeight(heightMm: number | null, words: string, units: Units): boolean {
  if (heightMm === null) return false
  try { return Math.abs(readLengthMm(words, units.length) - heightMm) <= nearMm } catch (error) {
    if (error instanceof Refusal) return false // What is no length may still be a name.
    throw error
  }
}

function plain(text: string): string {
  return text.trim().replace(/\s+/g, ' ').replaceAll(',', '.').toLowerCase()
}
