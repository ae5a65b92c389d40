import type { Situation } from '#model/situation.ts'
import { cautionsFor } from '#words/cautions.ts'
import { useUnits } from '#web/units.ts'

/** The usual cautions for what is about to be done. */
export function Cautions({ situations }: { readonly situations: readonly Situation[] }) {
  const units = useUnits()
  return (
    <section aria-label="Cautions">
      <ul className="beside-cautions">{cautionsFor(new Set(situations), units).map((said) => <li key={said}>{said}</li>)}</ul>
    </section>
  )
}
