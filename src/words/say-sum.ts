import type { Sum } from '#model/sum.ts'
import type { Units } from '#model/shop-record.ts'
import { keyWord } from '#words/key-words.ts'
import { setupSums } from '#words/sums/setup.ts'
import { termsFor } from '#words/terms.ts'
import { capital, type Wording, wordingFor } from '#words/wording.ts'

/** A formula as a sentence with the names of its inputs in braces: `{jawHeightMm} + {depthMm} − {heightMm}`. */
export type SumWords = { readonly title: string; readonly says: string }

/** One computed number, three ways: what it is, the formula in words, the same with the numbers in. */
export type SaidSum = { readonly title: string; readonly inWords: string; readonly worked: string; readonly sources: readonly string[] }

export const sumWords: { readonly [formula: string]: SumWords } = { ...setupSums }

export function saySum(sum: Sum, units: Units): SaidSum {
  const w = wordingFor(units)
  const known = Object.hasOwn(sumWords, sum.formula) ? sumWords[sum.formula]! : null
  const title = known?.title ?? capital(nameOf(sum.result.name, units))
  const says = known?.says ?? Object.keys(sum.inputs).map((name) => `{${name}}`).join(', ')
  const fill = (put: (name: string) => string): string => says.replace(/\{([A-Za-z0-9]+)\}/g, (_all, name: string) => put(name))
  return {
    title,
    inWords: `${nameOf(sum.result.name, units)} = ${fill((name) => nameOf(name, units))}`,
    worked: `${fill((name) => valueOf(name, sum.inputs[name], w))} = ${valueOf(sum.result.name, sum.result.value, w)}`,
    sources: sum.sources,
  }
}

const nameOf = (name: string, units: Units): string => sumNames[name] ?? keyWord(name, termsFor(units.words)) ?? name

/** Names that only sums use; the rest are the names of the fields. */
const sumNames: { readonly [name: string]: string } = {
  lowMm: 'lowest seat', highMm: 'highest seat', widthMm: 'width of the window', advisedHighMm: 'highest advised seat', gripWishMm: 'grip wished', stickOutMm: 'above the jaws',
  tipMm: 'length of the tip', bedMm: 'bed',
}

function valueOf(name: string, value: string | number | null | undefined, w: Wording): string {
  if (value === undefined) return '?'
  if (value === null) return 'none'
  if (typeof value === 'string') return value
  return name.endsWith('Mm') ? w.length(value) : name.endsWith('Um') ? w.micrometres(value) : w.number(value)
}
