import { Refusal } from '#model/refusal.ts'
import type { BudgetQuestion } from '#engine/inspect/budget.ts'
import { totalOf } from '#engine/numeric/total.ts'

/** Below this a factor of Student would be a number without meaning. */
const leastDof = 0.1

/**
 * Refuses a budget that cannot be.
 *
 * @throws Refusal `too-few-parts`, `part-named-twice`, `uncertainty-negative`, `size-not-positive`, `dof-too-small`,
 * `coverage-out-of-range`, `unknown-part`, `correlation-out-of-range`, `correlations-impossible`
 */
export function refuseUnfitBudget({ parts, products, correlations, coverage, k }: BudgetQuestion): void {
  if (parts.length === 0) throw new Refusal('too-few-parts', { field: 'parts', given: 0, needed: 1 })
  const names = new Set<string>()
  parts.forEach(({ name, spread, dof }, i) => {
    const field = `parts[${i}]`
    if (names.has(name)) throw new Refusal('part-named-twice', { field: `${field}.name`, given: name, needed: 'a name of its own' })
    names.add(name)
    const size = spread.kind === 'u' ? spread.u : spread.kind === 'sd' ? spread.sd : spread.halfWidth
    if (size < 0) throw new Refusal('uncertainty-negative', { field: `${field}.${spread.kind}`, given: size, needed: { least: 0 } })
    if (spread.kind === 'sd' && spread.n < 1) throw new Refusal('size-not-positive', { field: `${field}.n`, given: spread.n, needed: { above: 0 } })
    if (dof !== null && dof < leastDof) throw new Refusal('dof-too-small', { field: `${field}.dof`, given: dof, needed: { least: leastDof } })
  })
  if (!(coverage > 0 && coverage < 1)) throw new Refusal('coverage-out-of-range', { field: 'coverage', given: coverage, needed: { above: 0, below: 1 } })
  if (k !== null && k <= 0) throw new Refusal('size-not-positive', { field: 'k', given: k, needed: { above: 0 } })
  const known = (list: string) => ({ of }: { readonly of: readonly [string, string] }, i: number): void => of.forEach((name, j) => {
    if (!names.has(name)) throw new Refusal('unknown-part', { field: `${list}[${i}].of[${j}]`, given: name, needed: [...names] })
  })
  products.forEach(known('products'))
  correlations.forEach(known('correlations'))
  correlations.forEach(({ r }, i) => {
    if (Math.abs(r) > 1) throw new Refusal('correlation-out-of-range', { field: `correlations[${i}].r`, given: r, needed: { least: -1, most: 1 } })
  })
  if (!canBe(correlations)) throw new Refusal('correlations-impossible', { field: 'correlations', given: correlations.length, needed: 'correlations that can hold together' })
}

/** Rounding in printed correlations may take this much from a variance that should be 0. */
const nearlyZero = 1e-9

/** Whether correlations can hold together: each pair once, and no sum of such quantities with a variance below 0 (Cholesky). */
function canBe(correlations: BudgetQuestion['correlations']): boolean {
  const names = [...new Set(correlations.flatMap(({ of }) => of))], pairs = new Set(correlations.map(({ of }) => JSON.stringify(of.toSorted())))
  if (pairs.size < correlations.length || correlations.some(({ of: [a, b] }) => a === b)) return false
  const root = names.map(() => names.map(() => 0))
  const between = (a: string, b: string): number => (a === b ? 1 : (correlations.find(({ of }) => of.includes(a) && of.includes(b))?.r ?? 0))
  return names.every((a, i) => names.slice(0, i + 1).every((b, j) => {
    const rest = between(a, b) - totalOf(root[i]!.slice(0, j).map((value, m) => value * root[j]![m]!))
    if (i === j) { root[i]![j] = Math.sqrt(Math.max(0, rest)); return rest >= -nearlyZero }
    root[i]![j] = root[j]![j]! > Math.sqrt(nearlyZero) ? rest / root[j]![j]! : 0
    return root[j]![j]! > Math.sqrt(nearlyZero) || Math.abs(rest) <= Math.sqrt(nearlyZero)
  }))
}
