import { type MeasuredBar, measuredBarFrom } from '#engine/inspect/measured-bar.ts'
import { heightsOf, type RackFacts } from '#engine/rack/bar-from.ts'

/** Bars that are measured today, each as its latest check leaves it; those only marked, or reground since, are left out. */
export function measuredBarsOf(facts: RackFacts): readonly MeasuredBar[] {
  const heights = heightsOf(facts), checks = new Map(facts.checks.map((check) => [check.id, check]))
  return facts.bars.flatMap((record) => {
    const height = heights(record.id), check = height?.standing === 'measured' ? checks.get(height.check) : undefined
    return (check && measuredBarFrom(record, check, facts.shop.limitsUm)) ?? []
  })
}
