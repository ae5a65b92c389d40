import type { Finding } from '#model/finding.ts'
import type { ReadWith } from '#model/read-with.ts'
import { type BudgetAnswer, budgetOf, type BudgetPart } from '#engine/inspect/budget.ts'

/** Steel, and how far two steels may differ in it. @source GUM H.1 */
export const steelPerC = 11.5e-6, steelApartPerC = 1e-6

/** What the readings themselves bring along: their number, scatter and closing zero. */
export type ReadFigures = {
  readonly heightMm: number
  readonly repeatabilityUm: number | null
  readonly repeatabilityDof: number
  readonly readings: number
  /** Repeats at the place read least often. */
  readonly perPlace: number
  readonly driftUm: number | null
}

/** `leftOut`: parts of the method that cancel in this figure, each with its reason as the code. */
export type CheckBudget = BudgetAnswer & { readonly leftOut: readonly Finding[] }
export type CheckUncertainty = { readonly height: CheckBudget; readonly parallelism: CheckBudget; readonly difference: CheckBudget }

/**
 * Measuring uncertainty in µm of a bar's mean height, of its parallelism (the difference of two of its readings), and of
 * the difference of two mates at a station when both were read in one check at one spot.
 *
 * In a difference of two readings step and scatter count twice. Mates read so share plate, zero, block, instrument and
 * temperature: only step, scatter and drift are left. Each is worked out when it is asked for: a rack asks one of many bars.
 *
 * @source GUM (4.3.7, 5.1.2, F.2.2.1, H.1)
 */
export function checkUncertainty(read: ReadWith, figures: ReadFigures): CheckUncertainty {
  const plate = read.method === 'compare' ? halfWidth('plate', half(read.plateFlatnessUm)) : [], instrument = halfWidth('instrument', read.limitUm)
  const drift = figures.driftUm === null ? [] : halfWidth('drift', Math.abs(figures.driftUm))
  const twice = [...reading(read, figures, figures.perPlace, Math.SQRT2), ...drift], once = [...reading(read, figures, figures.readings, 1), ...drift]
  return {
    get height() { return budgeted([...once, ...instrument, ...plate, ...ofTheZero(read, figures), ...warmth(read, figures.heightMm)]) },
    get parallelism() { return budgeted([...twice, ...instrument, ...plate], cancel('cancels-along-bar', read)) },
    get difference() { return budgeted(twice, cancel('cancels-between-mates', read, ['instrument', 'plate'])) },
  }
}

const half = (width: number | null): number | null => (width === null ? null : width / 2)

const part = (name: string, spread: BudgetPart['spread'], sensitivity = 1, dof: number | null = null): BudgetPart => ({ name, spread, sensitivity, dof })

/** A part that may lie anywhere within ± a width, if there is one. */
const halfWidth = (name: string, width: number | null, sensitivity = 1): BudgetPart[] =>
  width === null ? [] : [part(name, { kind: 'halfWidth', halfWidth: width, distribution: 'rectangular' }, sensitivity)]

/** Step and scatter of what is read. */
function reading(read: ReadWith, figures: ReadFigures, n: number, sensitivity: number): BudgetPart[] {
  return [...halfWidth('reading step', read.resolutionUm / 2, sensitivity), ...scatter('repeats', read, figures, n, sensitivity)]
}

function scatter(name: string, read: ReadWith, { repeatabilityUm, repeatabilityDof }: ReadFigures, n: number, sensitivity = 1): BudgetPart[] {
  const sd = repeatabilityUm ?? read.repeatabilityUm
  return sd === null ? [] : [part(name, { kind: 'sd', sd, n }, sensitivity, repeatabilityUm === null ? null : repeatabilityDof)]
}

/** The block and the one reading that set the zero on it. */
function ofTheZero(read: ReadWith, figures: ReadFigures): BudgetPart[] {
  if (read.method !== 'compare') return []
  const block = read.blockUUm === null ? halfWidth('block', read.blockLimitUm) : [part('block', { kind: 'u', u: read.blockUUm })]
  return [...block, ...scatter('zero', read, figures, 1)]
}

/** Bar and block unlike warm; and both away from 20 °C, which counts only times what their steels differ by. */
function warmth(read: ReadWith, heightMm: number): BudgetPart[] {
  const heightUm = heightMm * 1000
  return [...halfWidth('temperature', read.betweenC, heightUm * read.expansionPerC), ...(read.awayC === null ? [] : halfWidth('expansion', read.expansionApartPerC, heightUm * read.awayC))]
}

function cancel(code: 'cancels-along-bar' | 'cancels-between-mates', read: ReadWith, more: readonly string[] = []): readonly Finding[] {
  const shared = read.method === 'compare' ? ['block', 'zero', 'temperature', 'expansion', ...more] : ['temperature', 'expansion', ...more.filter((name) => name !== 'plate')]
  return shared.map((name) => ({ code, facts: { part: name } }))
}

/** Coverage of the expanded uncertainty. */
const coverage = 0.95

function budgeted(parts: readonly BudgetPart[], leftOut: readonly Finding[] = []): CheckBudget {
  return { ...budgetOf({ parts, products: [], correlations: [], coverage, k: null }), leftOut }
}
