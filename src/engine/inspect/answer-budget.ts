import type { Sum } from '#model/sum.ts'
import { readCase, type Ignored } from '#engine/read/read-case.ts'
import type { RawObject } from '#engine/read/raw-object.ts'
import { type BudgetAnswer, budgetOf, type BudgetPart, type BudgetQuestion, distributions } from '#engine/inspect/budget.ts'
import { mostAnyUnit } from '#engine/inspect/reading-limits.ts'

const mostParts = 1000, mostCorrelations = 200
const commonCoverage = 0.95

export type BudgetCaseAnswer = BudgetAnswer & Ignored & { readonly unit: string | null; readonly sum: readonly Sum[] }

/** The calculation `budget`: one raw case in, its answer out. @throws Refusal with a malformed code, then as `refuseUnfitBudget` */
export function answerBudget(raw: unknown): BudgetCaseAnswer {
  const { value: { unit, ...question }, ignored } = readCase(raw, (object): BudgetQuestion & { unit: string | null } => ({
    unit: object.has('unit') ? object.text('unit') : null,
    parts: object.list('parts', readPart, mostParts),
    products: object.listOrEmpty('products', (product) => ({ of: product.twoTexts('of'), coefficient: product.number('coefficient', mostAnyUnit) }), mostParts),
    correlations: object.listOrEmpty('correlations', (pair) => ({ of: pair.twoTexts('of'), r: pair.number('r') }), mostCorrelations),
    coverage: object.numberOr('coverage', commonCoverage), k: object.numberOr('k', null),
  }))
  const answer = budgetOf(question)
  return { ...answer, unit, ignored, sum: sumOf(question, answer) }
}

/** The estimate (`value`) is part of a budget as written down and of no sum: the sensitivities already hold it. */
function readPart(raw: RawObject): BudgetPart {
  raw.numberOr('value', null, mostAnyUnit)
  const name = raw.text('name'), sensitivity = raw.numberOr('sensitivity', 1, mostAnyUnit), spread = readSpread(raw)
  const n = spread.kind === 'sd' ? spread.n : null
  // The scatter of one reading was found elsewhere, and only there is known from how many.
  const dof = n === 1 ? raw.number('dof', mostAnyUnit) : raw.numberOr('dof', n === null ? null : n - 1, mostAnyUnit)
  return { name, sensitivity, spread, dof }
}

/** One of three ways; of two given at once the second is among the ignored. */
function readSpread(raw: RawObject): BudgetPart['spread'] {
  if (raw.has('halfWidth')) return { kind: 'halfWidth', halfWidth: raw.number('halfWidth', mostAnyUnit), distribution: raw.word('distribution', distributions)! }
  if (raw.has('sd')) return { kind: 'sd', sd: raw.number('sd', mostAnyUnit), n: raw.count('n') }
  return { kind: 'u', u: raw.number('u', mostAnyUnit) }
}

function sumOf({ coverage }: BudgetQuestion, { u, dof, k, expandedU, contributions, covariances }: BudgetAnswer): readonly Sum[] {
  const parts = Object.fromEntries(contributions.map((one) => [one.name, one.u])), sources = ['GUM']
  const shared = Object.fromEntries(covariances.map(({ of, share }) => [of.join(' with '), share * u * u]))
  return [
    { formula: 'budget-u', result: { name: 'u', value: u }, inputs: { ...parts, ...shared }, sources },
    { formula: 'effective-dof', result: { name: 'dof', value: dof }, inputs: { u, ...parts }, sources },
    ...(k === null ? [] : [
      { formula: 'coverage-factor', result: { name: 'k', value: k }, inputs: { coverage, dof }, sources },
      { formula: 'expanded-u', result: { name: 'expandedU', value: expandedU }, inputs: { k, u }, sources },
    ]),
  ]
}
