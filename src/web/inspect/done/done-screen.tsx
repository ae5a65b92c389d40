import { useMemo } from 'react'
import { checkedOf } from '#engine/inspect/checked.ts'
import type { Check } from '#model/check.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { profileDrawing } from '#drafting/inspect/profile.ts'
import { barNamer } from '#web/inspect/bar-names.ts'
import { profileOf } from '#web/inspect/done/profile-of.ts'
import { beginDraft } from '#web/inspect/draft/draft-edits.ts'
import { draftFromCheck } from '#web/inspect/draft/draft-from-check.ts'
import { draftPath } from '#web/inspect/draft/draft-path.ts'
import { useInspectFacts } from '#web/inspect/facts.ts'
import { sayMethod, sayTime } from '#web/inspect/say-check.ts'
import { AnswerHead } from '#web/inspect/verdict/answer-head.tsx'
import { AnswerList } from '#web/inspect/verdict/answer-list.tsx'
import { Figures } from '#web/inspect/verdict/figures.tsx'
import { Drawing } from '#web/parts/drawing.tsx'
import { Link } from '#web/parts/link.tsx'
import { go } from '#web/router.ts'
import { useUnits } from '#web/units.ts'

/** What came out of a check, worked out anew from its readings. */
export function DoneScreen({ shop, id }: { readonly shop: ShopSnapshot; readonly id: string }) {
  const check = shop.checks.find((one) => one.id === id)
  return check ? <Done shop={shop} check={check} /> : <div className="page"><h1>There is no such check here</h1><p><Link to="/inspect">See all checks</Link></p></div>
}

function Done({ shop, check }: { readonly shop: ShopSnapshot; readonly check: Check }) {
  const units = useUnits(), facts = useInspectFacts(shop), { bars, mates, checks } = shop, { limitsUm } = facts
  const lengthMmOf = useMemo(() => { const lengths = new Map(bars.map((bar) => [bar.id, bar.lengthMm])); return (bar: string) => lengths.get(bar) ?? null }, [bars])
  const answer = useMemo(() => checkedOf(check, { limitsUm, lengthMmOf }), [check, limitsUm, lengthMmOf])
  const nameOf = useMemo(() => barNamer(answer.bars.map((bar) => bar.id), { bars, mates, checks }, facts, units), [answer, bars, mates, checks, facts, units])
  const profile = useMemo(() => profileOf(answer, nameOf, units, lengthMmOf), [answer, nameOf, units, lengthMmOf])
  const after = checks.find(({ replaces }) => replaces === check.id), { took, temperature, zero } = check
  const correct = () => {
    const fields = draftFromCheck(check, lengthMmOf)
    go(draftPath({ id: beginDraft(fields), form: fields.form }))
  }
  const taken: readonly (readonly [string, string])[] = [
    ['read with', took?.instrument?.name ?? 'not told'], ...(took?.plate ? [['plate', took.plate.name]] as const : []), ...(took?.blocks ? [['blocks', took.blocks.name]] as const : []),
    ...(zero ? [['zero on', zero.on === 'block' ? `block ${zero.text}` : nameOf(zero.bar)]] as const : []), ...(temperature ? [['at the plate', `${temperature.text} °C`]] as const : []),
    ['readings', String(check.readings.length)],
  ]
  return (
    <div className="setup insp insp-done">
      <section className="setup-sheet" aria-label="Sheet">
        <div className="insp-stage insp-done-sheet">
          <Link to="/inspect" className="back">Inspect</Link>
          <h2 className="name-text">{answer.bars.map((bar) => nameOf(bar.id)).join(' · ')}</h2>
          <p>{sayMethod(check.method)}, {sayTime(check.atIso)}{check.person === '' ? '' : ` by ${check.person}`}{check.asFound ? ', as found' : ''}</p>
          {after ? <p className="setup-refusal">A later check replaces this one. <Link to={`/inspect/done/${after.id}`}>See it</Link></p> : null}
          {check.replaces === null ? null : <p>Replaces <Link to={`/inspect/done/${check.replaces}`}>an earlier check</Link>, which stays as it was read.</p>}
          {profile ? <Drawing scene={profileDrawing(profile, { widthMm: 150, heightMm: 70, units })} /> : null}
          <dl className="facts">{taken.map(([name, value]) => <div key={name}><dt>{name}</dt><dd className="name-text">{value}</dd></div>)}</dl>
          {check.note === '' ? null : <p className="name-text note">{check.note}</p>}
        </div>
      </section>
      <AnswerHead answer={answer} method={check.method} bars={answer.bars.length} />
      <Figures answer={answer} />
      <div className="setup-side"><AnswerList answer={answer} nameOf={nameOf} /></div>
      <div className="setup-actions insp-actions">
        <Link to={`/inspect/done/${check.id}/certificate`} className="action main">Certificate</Link>
        <button type="button" className="action" disabled={after !== undefined} onClick={correct}>Correct this</button>
        <Link to="/inspect" className="action">All checks</Link>
      </div>
    </div>
  )
}
