import type { Sum } from '#model/sum.ts'
import { saySum } from '#words/say-sum.ts'
import { useUnits } from '#web/units.ts'

/** One computed number: what it is, the formula in words, the same with the numbers in, its sources. */
export function OneSum({ sum }: { readonly sum: Sum }) {
  const said = saySum(sum, useUnits())
  return (
    <div className="sum-one">
      <dt>{said.title}</dt>
      <dd>{said.inWords}</dd>
      <dd className="sum-worked">{said.worked}</dd>
      <dd className="small">{said.sources.length > 0 ? `Source: ${said.sources.join(', ')}` : 'Common practice, no source'}</dd>
    </div>
  )
}
