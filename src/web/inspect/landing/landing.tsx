import { useMemo } from 'react'
import type { CheckMethod } from '#model/check-methods.ts'
import type { DraftRecord } from '#model/check-draft.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { capital } from '#words/wording.ts'
import { beginDraft } from '#web/inspect/draft/draft-edits.ts'
import { newDraft, newForm } from '#web/inspect/draft/new-draft.ts'
import { useInspectFacts } from '#web/inspect/facts.ts'
import { HalfDone } from '#web/inspect/landing/half-done.tsx'
import { LatestChecks } from '#web/inspect/landing/latest-checks.tsx'
import { EmptyShop } from '#web/parts/empty-shop.tsx'
import { Link } from '#web/parts/link.tsx'
import { go } from '#web/router.ts'
import { AskPerson } from '#web/shell/ask-person.tsx'
import { useTerms, useUnits } from '#web/units.ts'

/** Where a check begins, goes on, or is looked up again. */
export function Landing({ shop }: { readonly shop: ShopSnapshot }) {
  const units = useUnits(), { indicator } = useTerms(), facts = useInspectFacts(shop), open = useMemo(() => shop.drafts.filter(isBegun), [shop.drafts])
  const begin = (method: CheckMethod) => go(`/inspect/check/${beginDraft(newDraft(newForm(method, units.length, shop)))}`)
  if (shop.bars.length === 0 && open.length === 0) return <NoBarsYet shop={shop} />
  return (
    <>
      <AskPerson />
      <div className="page insp-landing">
        <h1>Inspect</h1>
        {open.length > 0 ? <HalfDone drafts={open} shop={shop} facts={facts} /> : null}
        <section aria-label="Begin">
          <ul className="insp-starts">
            <li><button type="button" className="insp-start" onClick={() => begin('compare')}><strong>Check at the plate</strong><span>{capital(indicator)} against a zero, station by station: the shape of each bar and how two go together.</span></button></li>
            <li><button type="button" className="insp-start" onClick={() => begin('micrometer')}><strong>Micrometer</strong><span>Heights themselves, station by station.</span></button></li>
            <li><button type="button" className="insp-start" onClick={() => begin('turn-over')}><strong>Turn over</strong><span>Either face up: bent, or uneven?</span></button></li>
            <li><button type="button" className="insp-start" onClick={() => begin('rock')}><strong>Rock</strong><span>Finger and feeler: does it lie still?</span></button></li>
            <li><Link to="/inspect/quick" className="insp-start"><strong>Quick look</strong><span>Wiped, stoned, no rock, two readings: back to milling and drilling.</span></Link></li>
            <li><Link to="/inspect/box" className="insp-start"><strong>Box of used bars</strong><span>Three heights and a look each: pairs, beaters, worth regrinding, scrap.</span></Link></li>
            <li><Link to="/inspect/mates" className="insp-start"><strong>Mates</strong><span>The best pairs out of what was measured.</span></Link></li>
          </ul>
        </section>
        <LatestChecks shop={shop} facts={facts} />
      </div>
    </>
  )
}

function NoBarsYet({ shop }: { readonly shop: ShopSnapshot }) {
  return (
    <div className="page">
      <h1>Inspect</h1>
      <p>A box of used bars nobody knows can be sorted before anything else is there.</p>
      <div className="actions"><Link to="/inspect/box" className="action">Sort a box of used bars</Link></div>
      <EmptyShop lacks={shop.vises.length === 0 ? 'both' : 'bars'} />
    </div>
  )
}

/** One that was opened and left before anything was in it is nothing to go on with. */
const isBegun = ({ state, form: { bars, zero, temperature, note } }: DraftRecord): boolean => state === 'open' && (bars.length > 0 || [zero, temperature, note].some((text) => text !== ''))
