import { useMemo } from 'react'
import type { ShopSnapshot } from '#model/snapshot.ts'
import { EmptyShop } from '#web/parts/empty-shop.tsx'
import { Link } from '#web/parts/link.tsx'
import { AddBars } from '#web/rack/add-bars.tsx'
import { BarCard } from '#web/rack/bar-card.tsx'
import { EditBar } from '#web/rack/edit-bar.tsx'
import { ImportBars } from '#web/rack/import-bars.tsx'
import { type RackGroup, rackGroups } from '#web/rack/rack-bars.ts'
import { RackList } from '#web/rack/rack-list.tsx'
import { RackSummary } from '#web/rack/rack-summary.tsx'
import { AskPerson } from '#web/shell/ask-person.tsx'
import '#web/styles/rack.css'

type Props = { readonly shop: ShopSnapshot; readonly rest: readonly string[] }

/** All bars standing to scale, and beside them the one that was chosen, or what is to be done with the rack. */
export function RackScreen({ shop, rest }: Props) {
  const groups = useMemo(() => rackGroups(shop), [shop])
  if (groups.length === 0 && rest.length === 0) return <div className="page"><h1>Rack</h1><EmptyShop lacks={shop.vises.length === 0 ? 'both' : 'bars'} /></div>
  return (
    <div className="desk" data-chosen={rest.length > 0 ? '' : undefined}>
      <div className="desk-sheet">
        <AskPerson />
        <RackList groups={groups} chosen={rest[0] ?? null} />
      </div>
      <section className="desk-side" aria-label={rest.length > 0 ? 'Chosen' : 'The whole rack'}><Side groups={groups} shop={shop} rest={rest} /></section>
    </div>
  )
}

function Side({ groups, shop, rest: [step, what] }: Props & { readonly groups: readonly RackGroup[] }) {
  if (step === undefined) return <RackSummary groups={groups} />
  if (step === 'new') return <AddBars shop={shop} />
  if (step === 'import') return <ImportBars />
  const group = groups.find(({ bars }) => bars.some(({ record }) => record.id === step))
  const bar = group?.bars.find(({ record }) => record.id === step)
  if (group === undefined || bar === undefined) return <div className="side-page"><h1>This bar is not in the rack</h1><p><Link to="/rack">See all bars</Link></p></div>
  return what === 'edit' ? <EditBar key={step} shop={shop} bar={bar} /> : <BarCard key={group.key} bar={bar} group={group} shop={shop} />
}
