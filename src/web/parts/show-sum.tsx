import { useState } from 'react'
import type { Sum } from '#model/sum.ts'
import { saySum } from '#words/say-sum.ts'
import { useUnits } from '#web/units.ts'

/**
 * The third depth of an answer: for each computed number the formula in words, the same with the numbers in, and its
 * sources. Written out only while it is open: it would cost more than all the rest of a key stroke.
 */
export function ShowSum({ sums, title = 'Show the sum' }: { readonly sums: readonly Sum[]; readonly title?: string }) {
  const [open, setOpen] = useState(false)
  return (
    <details className="sum" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {open ? <dl>{sums.map((sum, place) => <OneSum key={place} sum={sum} />)}</dl> : null}
    </details>
  )
}

function OneSum({ sum }: { readonly sum: Sum }) {
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
