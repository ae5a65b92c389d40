import type { CertificateData } from '#drafting/inspect/certificate.ts'
import type { CheckBudget } from '#engine/inspect/check-uncertainty.ts'
import { wordNumber } from '#model/length.ts'
import { sayFinding } from '#words/say-finding.ts'
import type { Certified } from '#web/inspect/print/certified.ts'

type Column = { readonly head: string; readonly budget: CheckBudget }

/** The parts of the uncertainties side by side, of the bar where they are largest, and what cancels with its reason. */
export function uncertaintyOf({ checked: { bars, pair }, units, nameOf }: Certified): CertificateData['uncertainty'] {
  const widest = bars.filter(({ shape }) => shape?.uncertainty).toSorted((a, b) => b.shape!.uncertainty!.height.u - a.shape!.uncertainty!.height.u)[0]
  const uncertainty = widest?.shape?.uncertainty
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
        ...parts.map((part) => row(part, ({ contributions }) => { const own = contributions.find(({ name }) => name === part); return own ? figure(own.u) : '' })),
        row('standard uncertainty together', ({ u }) => figure(u)),
        row('effective degrees of freedom', ({ dof }) => (dof === null ? 'endless' : wordNumber(Math.floor(dof), units.decimalMark))),
        row('k for 95 %', ({ k }) => figure(k)), row('U = k times that', ({ expandedU }) => figure(expandedU)),
      ],
    },
    notes: columns.flatMap(({ head, budget }) => budget.leftOut.map((left) => `${head}: ${sayFinding(left, units, nameOf)}`)),
  }
}
