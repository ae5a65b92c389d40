import type { OutcomeFields } from '#model/outcome-record.ts'

/** What parts of this shop came out as beyond everything that was foretold; `sdUm` null: too few were measured to say. */
export type Scattered = { readonly sdUm: number | null; readonly count: number }
export type Scatter = { readonly along: Scattered; readonly across: Scattered }

/** Parts to be measured before their scatter says anything. Common practice, no source. */
export const fewestOutcomes = 5

/**
 * The shop's own scatter along and across: what measured less foretold spreads by, the spread that was foretold taken out.
 *
 * s² = Σ (measured − foretold)² / n − Σ sd² / n, and 0 where that is below 0. An offset that always comes back counts as scatter.
 */
export function scatterFrom(outcomes: readonly Pick<OutcomeFields, 'foretold' | 'measuredUm' | 'retired'>[]): Scatter {
  const standing = outcomes.filter(({ retired }) => !retired)
  const of = (way: 'along' | 'across'): Scattered => {
    const apart = standing.flatMap(({ foretold, measuredUm: { [way]: um } }) => (foretold === null || um === null ? [] : [(um - foretold[way].meanUm) ** 2 - foretold[way].sdUm ** 2]))
    return { count: apart.length, sdUm: apart.length < fewestOutcomes ? null : Math.sqrt(Math.max(0, apart.reduce((sum, one) => sum + one, 0) / apart.length)) }
  }
  return { along: of('along'), across: of('across') }
}
