import type { Coverage, WhyNot } from '#engine/rack/coverage/coverage.ts'
import type { WorkOfShop } from '#engine/rack/coverage/work-of-shop.ts'
import { withUnit } from '#model/length.ts'
import type { Units } from '#model/shop-record.ts'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { sayFinding } from '#words/say-finding.ts'
import { termsFor } from '#words/terms.ts'
import { useUnits } from '#web/units.ts'

type Props = { readonly work: WorkOfShop; readonly coverage: Coverage; readonly shop: ShopSnapshot }

/** So many of one kind are named; the others are counted. */
const mostNamed = 8

/** What nothing serves, by why: first what new bars would serve, then thin parts and the like that no bar serves. */
export function NotServed({ work, coverage, shop }: Props) {
  const units = useUnits(), why = new Map<WhyNot, number[]>()
  for (const { setup, why: reason } of coverage.unserved) why.set(reason, [...(why.get(reason) ?? []), setup])
  if (why.size === 0) return null
  return (
    <section aria-label="Not served">
      <h2>Not served</h2>
      {order.filter((reason) => why.has(reason)).map((reason) => {
        const setups = why.get(reason)!, named = [...new Set(setups.map((setup) => nameOf(setup, work, shop, units)))]
        return (
          <details key={reason} className="sum">
            <summary>{setups.length}: {sayFinding({ code: reason, facts: {} }, units)}</summary>
            <ul className="rows">{named.slice(0, mostNamed).map((name) => <li key={name} className="name-text">{name}</li>)}{named.length > mostNamed ? <li className="small">and {named.length - mostNamed} more</li> : null}</ul>
          </details>
        )
      })}
    </section>
  )
}

const order: readonly WhyNot[] = ['no-bar-of-height', 'bars-too-thick', 'no-place', 'only-above-advice', 'no-height-serves', 'wider-than-vises']

function nameOf(k: number, { lines, question }: WorkOfShop, { setups, vises }: ShopSnapshot, units: Units): string {
  const line = lines[k]!, setup = question.setups[k]!, vise = vises.find(({ id }) => id === setup.viseId)?.name ?? `any ${termsFor(units.words).vise}`
  const part = 'part' in setup.asked ? `${withUnit(setup.asked.part.heightMm, units)} high${setup.asked.part.betweenJawsMm === null ? '' : `, ${withUnit(setup.asked.part.betweenJawsMm, units)} between jaws`}` : ''
  switch (line.from) {
    case 'setup': { const saved = setups.find(({ id }) => id === line.id); return `${[saved?.title, saved?.operation].filter((text) => text).join(', ') || 'unnamed'} (${part}; ${vise})` }
    case 'unserved': return `A question that nothing served (${part}; ${vise})`
    case 'typical': return `Typical part, ${part}; ${vise}`
  }
}
