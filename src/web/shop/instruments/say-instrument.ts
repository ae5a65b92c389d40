import type { InstrumentIs } from '#model/instrument-record.ts'
import { wordLength, wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { blockLimits, blockGrades } from '#reference/instruments/gauge-blocks.ts'
import { flatnessNamed } from '#reference/plates/named-grade.ts'
import { saySource } from '#words/say-source.ts'
import { termsFor } from '#words/terms.ts'
import { sourceOf } from '#web/shop/instruments/book-figures.ts'

const own = 'the shop’s own'

/** What kind of instrument it is, as this person calls it. */
export function sayKind(is: InstrumentIs['is'], units: Units): string {
  const { indicator, gauge } = termsFor(units.words)
  return is === 'indicator' ? indicator : is === 'gauge blocks' ? `${gauge} blocks` : is
}

/** The figures that count for it, each with where it is from: `reads 1 µm (the shop’s own), ± 2 µm (JIS-B-7503)`. */
export function sayFigures(figures: InstrumentIs, units: Units): string {
  const um = (value: number) => `${wordNumber(value, units.decimalMark, null, 3)} µm`, mm = (value: number) => wordLength(value, units)
  switch (figures.is) {
    case 'indicator': case 'micrometer': {
      const from = (figure: 'limitUm' | 'repeatabilityUm') => { const cited = sourceOf(figures.is, figure, figures); return cited === null ? own : saySource(cited) }
      return [
        ...(figures.is === 'micrometer' ? [`${mm(figures.fromMm)} to ${mm(figures.toMm)}`] : []),
        `reads to ${um(figures.resolutionUm)} (${own})`,
        figures.limitUm === null ? 'permissible error not known' : `± ${um(figures.limitUm)} (${from('limitUm')})`,
        figures.repeatabilityUm === null ? 'repeatability from the repeats' : `repeats to ${um(figures.repeatabilityUm)} (${from('repeatabilityUm')})`,
      ].join('; ')
    }
    case 'gauge blocks':
      if (figures.uUm !== null) return `standard uncertainty ${um(figures.uUm)} by certificate (${own})`
      if (figures.limitUm !== null) return `± ${um(figures.limitUm)} (${own})`
      return figures.grade === null ? 'grade and certificate not known' : `grade ${figures.grade}: ${sayBlocks(figures.grade, units) ?? 'not in the tables'}`
    case 'plate':
      if (figures.flatnessUm !== null) return `flat to ${um(figures.flatnessUm)} by certificate (${own})`
      return figures.grade === null ? 'flatness not known' : sayFlatness(figures.grade, figures.lengthMm, figures.widthMm, units) ?? 'flatness not known'
  }
}

/** Where a figure is from, to stand beside its field. */
export function sayFigureSource(is: InstrumentIs['is'], figure: 'limitUm' | 'repeatabilityUm', figures: Parameters<typeof sourceOf>[2]): string | null {
  if ((figures[figure] ?? null) === null) return null
  const cited = sourceOf(is, figure, figures)
  return cited === null ? own : saySource(cited)
}

/** Limits of a grade for a small and a larger block; null where the tables have no such grade. */
export function sayBlocks(name: string, { decimalMark, length }: Units): string | null {
  const grade = blockGrades.find((one) => one === name)
  if (grade === undefined) return null
  return [25, 100].map((mm) => {
    const row = blockLimits(grade, mm)!
    return `± ${wordNumber(row.limitUm, decimalMark)} µm up to ${wordLength(mm, { length, decimalMark })}${mm === 25 ? '' : ` (${saySource(row)})`}`
  }).join(', ')
}

/** Flatness by grade and size with its rule; null where one of them is not known. */
export function sayFlatness(grade: string, lengthMm: number | null, widthMm: number | null, { decimalMark }: Units): string | null {
  const found = lengthMm !== null && widthMm !== null && lengthMm > 0 && widthMm > 0 ? flatnessNamed(grade, lengthMm, widthMm) : null
  return found && `flat to ${wordNumber(found.flatnessUm, decimalMark, null, 1)} µm by ${found.rule} grade ${found.grade} and size (${saySource(found)})`
}
