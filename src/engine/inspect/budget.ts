import type { Finding } from '#model/finding.ts'
import { studentQuantile } from '#engine/numeric/student-t.ts'
import { totalOf } from '#engine/numeric/total.ts'
import { refuseUnfitBudget } from '#engine/inspect/refuse-budget.ts'

export const distributions = ['rectangular', 'triangular', 'arcsine'] as const
export type Distribution = (typeof distributions)[number]

/** One input of a measurement: its standard uncertainty in its own unit, and how strongly the result follows it. */
export type BudgetPart = {
  readonly name: string
  readonly sensitivity: number
  readonly spread:
    | { readonly kind: 'u'; readonly u: number }
    | { readonly kind: 'halfWidth'; readonly halfWidth: number; readonly distribution: Distribution }
    | { readonly kind: 'sd'; readonly sd: number; readonly n: number }
  /** Degrees of freedom; null: endless. */
  readonly dof: number | null
}

export type BudgetQuestion = {
  readonly parts: readonly BudgetPart[]
  /** Second-order terms, by the names of two parts: each adds (coefficient · u_a · u_b)² to the square of u. */
  readonly products: readonly { readonly of: readonly [string, string]; readonly coefficient: number }[]
  readonly correlations: readonly { readonly of: readonly [string, string]; readonly r: number }[]
  readonly coverage: number
  /** A coverage factor settled otherwise; null: from the coverage and the degrees of freedom. */
  readonly k: number | null
}

export type BudgetAnswer = {
  readonly u: number
  /** Effective degrees of freedom, not rounded; null: endless, or not to be had (see the findings). */
  readonly dof: number | null
  readonly k: number | null
  readonly expandedU: number | null
  /** Parts, then products, as they were given; `u` in the unit of the result, `share` of the square of u. */
  readonly contributions: readonly { readonly name: string; readonly u: number; readonly share: number }[]
  /** What correlations add to, or take from, the square of u. */
  readonly covariances: readonly { readonly of: readonly [string, string]; readonly share: number }[]
  readonly findings: readonly Finding[]
}

/** A half-width over its standard uncertainty. @source GUM 4.3.7, 4.3.9 */
const halfWidthPerU: { readonly [distribution in Distribution]: number } = { rectangular: Math.sqrt(3), triangular: Math.sqrt(6), arcsine: Math.SQRT2 }

/**
 * Measuring uncertainty from its parts.
 *
 * The effective degrees of freedom follow the Welch-Satterthwaite formula with u unrounded; k is Student's factor for the next
 * lower whole number of them. Where correlated parts have finite degrees of freedom that formula does not hold: u is
 * answered, k is asked for (finding `coverage-factor-needed`).
 *
 * @throws Refusal as `refuseUnfitBudget`
 * @source GUM (5.1.2, 5.2.2, G.4, G.6.4)
 */
export function budgetOf(question: BudgetQuestion): BudgetAnswer {
  const { parts, products, correlations, coverage } = question
  refuseUnfitBudget(question)
  const us = new Map(parts.map((part) => [part.name, standardU(part)])), effects = new Map(parts.map((part) => [part.name, part.sensitivity * us.get(part.name)!]))
  const terms = [
    ...parts.map((part) => ({ name: part.name, u: Math.abs(effects.get(part.name)!), dof: part.dof })),
    ...products.map(({ of: [a, b], coefficient }) => ({ name: `${a} × ${b}`, u: Math.abs(coefficient) * us.get(a)! * us.get(b)!, dof: null })),
  ]
  const together = correlations.map(({ of, r }) => ({ of, variance: 2 * r * effects.get(of[0])! * effects.get(of[1])! }))
  const variance = Math.max(0, totalOf([...terms.map((term) => term.u * term.u), ...together.map((pair) => pair.variance)])), u = Math.sqrt(variance)
  const judgeable = !correlations.some(({ of, r }) => r !== 0 && parts.some((part) => part.dof !== null && of.includes(part.name)))
  const dof = judgeable ? effectiveDof(u, terms) : null
  const k = question.k ?? (judgeable ? studentQuantile((1 + coverage) / 2, wholeDof(dof)) : null)
  const share = (square: number): number => (variance === 0 ? 0 : square / variance)
  return {
    u, dof, k, expandedU: k === null ? null : k * u,
    contributions: terms.map((term) => ({ name: term.name, u: term.u, share: share(term.u * term.u) })),
    covariances: together.map((pair) => ({ of: pair.of, share: share(pair.variance) })),
    findings: k === null ? [{ code: 'coverage-factor-needed', facts: { correlated: [...new Set(correlations.flatMap(({ of }) => of))] } }] : [],
  }
}

function standardU({ spread }: BudgetPart): number {
  switch (spread.kind) {
    case 'u': return spread.u
    case 'halfWidth': return spread.halfWidth / halfWidthPerU[spread.distribution]
    case 'sd': return spread.sd / Math.sqrt(spread.n)
  }
}

/** Welch-Satterthwaite; null: endless. @source GUM G.4.1 */
function effectiveDof(u: number, terms: readonly { readonly u: number; readonly dof: number | null }[]): number | null {
  const under = totalOf(terms.map((term) => (term.dof === null || u === 0 ? 0 : (term.u / u) ** 4 / term.dof)))
  return under === 0 ? null : 1 / under
}

/** Down to a whole number, below 1 as it is; rounding in the quotient costs no degree of freedom. @source GUM G.4.1 */
function wholeDof(dof: number | null): number {
  return dof === null ? Infinity : dof < 1 ? dof : Math.floor(dof * (1 + 1e-12))
}
