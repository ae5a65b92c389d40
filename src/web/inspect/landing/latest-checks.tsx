import { useMemo, useState } from 'react'
import { checkedOf } from '#engine/inspect/checked.ts'
import type { InspectFacts } from '#engine/inspect/inspect-facts.ts'
import type { Check } from '#model/check.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { barNamer } from '#web/inspect/bar-names.ts'
import { sayMethod, sayTime } from '#web/inspect/say-check.ts'
import { judgedOf } from '#engine/inspect/judged.ts'
import { finestProved, sayUm } from '#web/inspect/verdict/say-verdict.ts'
import { Link } from '#web/parts/link.tsx'
import { useUnits } from '#web/units.ts'

type Props = { readonly shop: ShopSnapshot; readonly facts: InspectFacts }

const atOnce = 8

/** What was proved lately, newest first; replaced checks are found from the ones that replace them. */
export function LatestChecks({ shop, facts }: Props) {
  const [shown, setShown] = useState(atOnce)
  const checks = useMemo(() => {
    const replaced = new Set(shop.checks.map(({ replaces }) => replaces))
    return shop.checks.filter((check) => check.method !== 'stated' && !replaced.has(check.id)).toSorted((a, b) => (a.atIso < b.atIso ? 1 : a.atIso > b.atIso ? -1 : 0))
  }, [shop.checks])
  return (
    <section aria-labelledby="latest-checks">
      <h2 id="latest-checks">Latest checks</h2>
      {checks.length === 0 ? <p>None yet.</p> : <ul>{checks.slice(0, shown).map((check) => <Row key={check.id} check={check} shop={shop} facts={facts} />)}</ul>}
      {checks.length > shown ? <button type="button" className="press" onClick={() => setShown(shown + 3 * atOnce)}>Show earlier ones</button> : null}
    </section>
  )
}

function Row({ check, shop, facts }: Props & { readonly check: Check }) {
  const units = useUnits()
  const answer = useMemo(() => checkedOf(check, { limitsUm: facts.limitsUm, lengthMmOf: (id) => shop.bars.find((bar) => bar.id === id)?.lengthMm ?? null }), [check, facts.limitsUm, shop.bars])
  const nameOf = barNamer(answer.bars.map(({ id }) => id), shop, facts, units), judged = judgedOf(answer), finest = finestProved(judged)
  const bars = answer.bars.length > 3 ? `${answer.bars.length} bars` : answer.bars.map(({ id }) => nameOf(id)).join(', ')
  const rocks = answer.bars.some(({ look }) => look?.rock === 'rocks')
  return (
    <li className="insp-row">
      <Link to={`/inspect/done/${check.id}`} className="insp-row-go">
        <span className="rack-what"><strong className="name-text">{bars}</strong><span className="small">{sayMethod(check.method)} · {sayTime(check.atIso)}{check.person === '' ? '' : ` by ${check.person}`}{check.replaces === null ? '' : ' · corrected'}</span></span>
        <span className="insp-row-said">
          <strong>{rocks ? '× rocks' : finest !== null ? `✓ ${finest}` : check.method === 'rock' ? '✓ lies still' : judged.uses.length === 0 ? 'not proved' : judged.uses.every(({ verdict }) => verdict === 'out') ? '× out' : '? not proved'}</strong>
          <span className="small">{judged.provedToUm !== null ? `proved to ${sayUm(judged.provedToUm, units, { up: true })} µm` : judged.foundUm === null ? '' : `${sayUm(judged.foundUm, units)} µm read`}</span>
        </span>
      </Link>
    </li>
  )
}
