import type { Sum } from '#model/sum.ts'
import { saySum } from '#words/say-sum.ts'
import { useUnits } from '#web/units.ts'

/** The third depth of an answer: for each computed number the formula in words, the same with the numbers in, and its sources. */
export function ShowSum({ sums, title = 'Show the sum' }: { readonly sums: readonly Sum[]; readonly title?: string }) {
  const units = useUnits()
  return (
    <details className="sum">
      <summary>{title}</summary>
      <dl>
        {sums.map((sum, place) => {
          const said = saySum(sum, units)
          return (
            // Two holes have the same formula, so only its place in the list tells a sum from another.
            <div key={place} className="sum-one">
              <dt>{said.title}</dt>
              <dd>{said.inWords}</dd>
              <dd className="sum-worked">{said.worked}</dd>
              <dd className="small">{said.sources.length > 0 ? `Source: ${said.sources.join(', ')}` : 'Common practice, no source'}</dd>
            </div>
          )
        })}
      </dl>
    </details>
  )
}
