import { useState } from 'react'
import { wordLength } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import type { ViseRecord } from '#model/vise-record.ts'
import { capital } from '#words/wording.ts'
import { Link } from '#web/parts/link.tsx'
import { useTerms, useUnits } from '#web/units.ts'

/** The vises with the jaws fitted now; each opens to be changed, and has its card to print. */
export function ViseList({ shop }: { readonly shop: ShopSnapshot }) {
  const { vise: word } = useTerms()
  const [retired, setRetired] = useState(false)
  const here = shop.vises.filter((vise) => !vise.retired), gone = shop.vises.length - here.length
  return (
    <section>
      <h2>{capital(word)}s</h2>
      {here.length === 0 ? <p>No {word} yet. Set up needs the height of the jaws above the bed, and how far it opens.</p> : null}
      <ul className="rows">{(retired ? shop.vises : here).map((vise) => <Row key={vise.id} vise={vise} />)}</ul>
      <div className="actions">
        <Link to="/shop/vise/new" className="action main">Add a {word}</Link>
        {gone > 0 ? <button type="button" className="action" aria-pressed={retired} onClick={() => setRetired(!retired)}>{retired ? 'Leave out the retired' : `Show the retired (${gone})`}</button> : null}
      </div>
    </section>
  )
}

function Row({ vise }: { readonly vise: ViseRecord }) {
  const units = useUnits(), fitted = vise.jawSets.find(({ id }) => id === vise.fittedJawSetId)
  const jaw = fitted === undefined ? '?' : fitted.fixedHeightMm === fitted.movingHeightMm ? wordLength(fitted.fixedHeightMm, units)
    : `${wordLength(fitted.fixedHeightMm, units)} / ${wordLength(fitted.movingHeightMm, units)}`
  return (
    <li className="vise-row">
      <Link to={`/shop/vise/${vise.id}`} className="vise-link">
        <strong className="name-text">{vise.name}{vise.retired ? ' (retired)' : ''}</strong>
        <span className="small name-text">jaws {jaw} high ({fitted?.name}), opens {wordLength(vise.openingMm, units)}, {wordLength(vise.jawWidthMm, units)} wide</span>
      </Link>
      <Link to={`/shop/vise/${vise.id}/card`} className="press" aria-label={`Card of ${vise.name}, to print`}>Card</Link>
    </li>
  )
}
