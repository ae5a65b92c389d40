import type { CertificateData } from '#drafting/inspect/certificate.ts'
import type { CheckBudget } from '#engine/inspect/check-uncertainty.ts'
import { turnOverGrows } from '#engine/inspect/turn-over-uncertainty.ts'
import { wordNumber } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import { termsFor } from '#words/terms.ts'
import { listOf } from '#words/wording.ts'
import type { Certified } from '#web/inspect/print/certified.ts'

/** Parts of a budget, as the certificate names them; another is called as it is. */
const partWords: { readonly [part: string]: string } = {
  zero: 'setting of the zero', temperature: 'difference in temperature', expansion: 'difference of the steels', instrument: 'error of the instrument', drift: 'drift of the zero',
}
const partWord = (part: string, units: Units): string => (part === 'block' ? `${termsFor(units.words).gauge} block` : partWords[part] ?? part)
const reasons: { readonly [code: string]: string } = { 'cancels-along-bar': 'the same all along the bar', 'cancels-between-mates': 'shared by mates read in one check at one spot' }

type Column = { readonly head: string; readonly budget: CheckBudget }

/** The parts of the uncertainties side by side, of the bar where they are largest, and what cancels with its reason. */
export function uncertaintyOf({ check: { method }, checked: { bars, pair }, units, nameOf }: Certified): CertificateData['uncertainty'] {
  const widest = bars.filter(({ budgets }) => budgets).toSorted((a, b) => b.budgets!.height.u - a.budgets!.height.u)[0]
  const uncertainty = widest?.budgets, grows = turnOverGrows(method)
  if (!uncertainty) return null
  const columns: readonly Column[] = [
    { head: 'height', budget: uncertainty.height }, { head: 'parallelism', budget: uncertainty.parallelism },
    ...(pair?.uncertainty ? [{ head: 'difference of the two', budget: pair.uncertainty.difference }] : []),
  ]
  const figure = (value: number | null): string => (value === null ? '–' : wordNumber(value, units.decimalMark, null, 2))
  const parts = [...new Set(columns.flatMap(({ budget }) => budget.contributions.map(({ name }) => name)))]
  const row = (label: string, of: (budget: CheckBudget) => string): readonly string[] => [label, ...columns.map(({ budget }) => of(budget))]
  return {
    heading: bars.length === 1 ? 'Uncertainty' : `Uncertainty, largest of ${nameOf(widest.id)}`,
    table: {
      heads: ['in µm', ...columns.map(({ head }) => head)],
      rows: [
        ...parts.map((part) => row(partWord(part, units), ({ contributions }) => { const own = contributions.find(({ name }) => name === part); return own ? figure(own.u) : '' })),
        row('standard uncertainty together', ({ u }) => figure(u)),
        ...(grows === 1 ? [] : [row('√3 times that: height apart from bend', ({ u }) => figure(u * grows))]),
        row('effective degrees of freedom', ({ dof }) => (dof === null ? 'endless' : wordNumber(Math.floor(dof), units.decimalMark))),
        row('k for 95 %', ({ k }) => figure(k)), row('U = k times that', ({ expandedU }) => figure(expandedU === null ? null : expandedU * grows)),
      ],
    },
    notes: columns.filter(({ budget }) => budget.leftOut.length > 0).map((column) => leftOut(column, units)),
  }
}

function leftOut({ head, budget }: Column, units: Units): string {
  const parts = budget.leftOut.map(({ facts }) => (typeof facts.part === 'string' ? partWord(facts.part, units) : '?')), [first] = budget.leftOut
  return `Left out of the ${head}, as ${reasons[first!.code] ?? first!.code}: ${listOf(parts)}.`
}
