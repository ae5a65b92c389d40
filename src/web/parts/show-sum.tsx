import { Suspense, useState } from 'react'
import type { Sum } from '#model/sum.ts'
import { arriving } from '#web/parts/arriving.ts'

const OneSum = arriving(async () => (await import('#web/parts/one-sum.tsx')).OneSum)

/**
 * The third depth of an answer: for each computed number the formula in words, the same with the numbers in, and its
 * sources. Fetched and written out only while it is open: it would cost more than all the rest of a key stroke.
 */
export function ShowSum({ sums, title = 'Show the sum' }: { readonly sums: readonly Sum[]; readonly title?: string }) {
  const [open, setOpen] = useState(false)
  return (
    <details className="sum" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {open ? <Suspense><dl>{sums.map((sum, place) => <OneSum key={place} sum={sum} />)}</dl></Suspense> : null}
    </details>
  )
}
