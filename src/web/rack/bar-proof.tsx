import { useMemo } from 'react'
import { wordLength, wordNumber } from '#model/length.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { verdictWords } from '#words/verdict-words.ts'
import { capital, listOf } from '#words/wording.ts'
import { Link } from '#web/parts/link.tsx'
import { proofOf } from '#web/rack/proof.ts'
import type { RackBar } from '#web/rack/rack-bars.ts'
import { sayWhyNot } from '#web/rack/say-proof.ts'
import { sayDay } from '#web/today.ts'
import { useUnits } from '#web/units.ts'

/** What the height of a bar rests on, and what it is proved for today. */
export function BarProof({ bar, shop }: { readonly bar: RackBar; readonly shop: ShopSnapshot }) {
  const units = useUnits(), { height, check, uses } = useMemo(() => proofOf(bar.record, shop), [bar, shop])
  const uUm = height?.uUm ?? null, exact = { decimals: units.length === 'mm' ? 3 : 5 }
  const open = uses.flatMap(({ use, whyNot }) => (whyNot ? [use] : [])), reasons = [...new Set(uses.flatMap(({ whyNot }) => (whyNot ? [sayWhyNot(whyNot, units)] : [])))]
  return (
    <section className="proof" aria-label="What it is proved for">
      <dl className="facts">
        <div>
          <dt>height {bar.standing}</dt>
          <dd>{height === null ? '?' : wordLength(height.heightMm, units, exact)}{uUm === null ? '' : ` ± ${wordNumber(2 * uUm, units.decimalMark, null, 1)} µm`}</dd>
        </div>
        <div><dt>thickness</dt><dd>{bar.record.thicknessStanding}</dd></div>
        <div><dt>code</dt><dd>{bar.record.code}</dd></div>
      </dl>
      {uUm === null ? null : <p className="small">± twice the standard uncertainty.</p>}
      {check === null ? null : <p><Link to={`/inspect/done/${check.id}`}>Checked {sayDay(check.atIso)}{check.person ? ` by ${check.person}` : ''}</Link></p>}
      <ul className="proof-uses">
        {uses.map(({ use, whyNot }) => {
          const { mark } = verdictWords[whyNot === null ? 'proved' : whyNot.why === 'out' || whyNot.why === 'rocks' ? 'out' : 'not-proved']
          return (
            <li key={use}>
              <span className="mark" aria-hidden="true">{mark}</span> {use}
              {whyNot === null || reasons.length === 1 ? <span className="unseen">: {whyNot === null ? 'proved' : 'not proved'}</span> : <span className="small">: {sayWhyNot(whyNot, units)}</span>}
            </li>
          )
        })}
      </ul>
      {reasons.length === 1 ? <p className="small">{open.length === uses.length ? 'Not proved for any use' : capital(listOf(open))}: {reasons[0]}.</p> : null}
    </section>
  )
}
